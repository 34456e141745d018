package loftcoil.runner.course;

/**
 * A word the lessons use in one sense.
 *
 * @param name the word itself, such as "hot leg"
 * @param markdown what it means, in a sentence or two
 * @param lessonId name of the lesson it first stands in; empty where none is named
 */
public record Term(String name, String markdown, String lessonId) {}
