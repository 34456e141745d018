package loftcoil.runner.check;

import java.util.Optional;
import loftcoil.runner.unit.WrittenUnit;

/** An answer as typed, read: a number, with or without a unit. */
public sealed interface AnswerText {

    /** Longest answer that is looked at, in UTF-16 units. */
    int LONGEST = 200;

    /**
     * A number was found.
     *
     * @param value the number, finite
     * @param unit the unit behind it; empty where none was written
     */
    record Amount(double value, Optional<WrittenUnit> unit) implements AnswerText {}

    /**
     * No one number could be made of it.
     *
     * @param words why, and what would be understood
     */
    record NotRead(String words) implements AnswerText {}

    /**
     * Reads an answer.
     *
     * @param typed as it was typed, anything at all
     * @return the number, or why there is none; never throws
     */
    static AnswerText read(String typed) {
        if (typed.length() > LONGEST) {
            return new NotRead("That is too long for one number. Give a number and its unit.");
        }
        String text = AnswerCleanup.answer(typed);
        if (text.isEmpty()) {
            return new NotRead("Type a number, with a unit behind it.");
        }
        try {
            return AnswerPieces.read(text);
        } catch (NumberText.DoubtException e) {
            return new NotRead(e.words());
        }
    }
}
