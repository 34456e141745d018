package loftcoil.engine.caution;

import loftcoil.engine.words.MeasuredText;

/**
 * Something the design does not say and that decides over a danger. Not a caution: nothing dangerous is known.
 *
 * @param field path of the field that would answer it, such as {@code safety.vent}
 * @param words the question in plain words, with why it matters
 */
public record Ask(String field, MeasuredText words) {

    /** The question in metric units. */
    public String text() {
        return words.metric();
    }
}
