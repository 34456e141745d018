package loftcoil.runner.lesson;

/**
 * A link in the text of a lesson, to be checked against the files there are.
 *
 * @param line line in the file, from 1
 * @param column column in that line, from 1
 * @param target where it leads, relative to the lessons folder, such as {@code words.md#drive}
 */
public record LessonLink(int line, int column, String target) {}
