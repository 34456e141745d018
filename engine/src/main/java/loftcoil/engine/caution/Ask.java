package loftcoil.engine.caution;

/**
 * Something the design does not say and that decides over a danger. Not a caution: nothing dangerous is known.
 *
 * @param field path of the field that would answer it, such as {@code safety.vent}
 * @param text the question in plain words, with why it matters
 */
public record Ask(String field, String text) {}
