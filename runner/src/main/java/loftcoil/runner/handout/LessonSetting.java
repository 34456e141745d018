package loftcoil.runner.handout;

import loftcoil.engine.words.Units;

/**
 * How the handout of a lesson is to be made.
 *
 * @param paper what it is printed on
 * @param units whose units plots, drawings and levers are in; the prose has those it was written in
 * @param seed the seed of the class: chooses the numbers that vary, the same as on the page of a learner with that seed
 * @param key true for the teacher's key: answers, worked solutions, and what to say to known wrong ideas
 */
public record LessonSetting(Paper paper, Units units, long seed, boolean key) {}
