package loftcoil.runner.session;

/**
 * One way to go on typing.
 *
 * @param text what would stand in the code
 * @param from where it would start, as an offset into the source from 0; it replaces all up to the cursor
 * @param fits true where its type fits what is expected there
 * @param meaning what it is, in one line; empty where that is not known
 */
public record Suggestion(String text, int from, boolean fits, String meaning) {}
