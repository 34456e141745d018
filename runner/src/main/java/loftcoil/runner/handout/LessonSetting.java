package loftcoil.runner.handout;

/**
 * How the handout of a lesson is to be made.
 *
 * @param paper what it is printed on
 * @param seed the seed of the class: chooses the numbers that vary, the same as on the page of a learner with that seed
 * @param key true for the teacher's key: answers, worked solutions, and what to say to known wrong ideas
 */
public record LessonSetting(Paper paper, long seed, boolean key) {}
