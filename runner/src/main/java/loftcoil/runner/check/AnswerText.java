package loftcoil.runner.check;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import loftcoil.runner.unit.UnitText;
import loftcoil.runner.unit.WrittenUnit;

/** An answer as typed, read: a number, with or without a unit. */
public sealed interface AnswerText {

    /** Longest answer that is looked at, in UTF-16 units. */
    int LONGEST = 200;

    /** What stands behind a number where a range goes on. */
    Pattern RANGE = Pattern.compile(
            "(?is)^(?:\\s*(?:-|to\\b|\\.\\.+|…|or\\b|and\\b|±|\\+/?-)|\\s*[^\\d\\s]+\\s+(?:to|or|and|-|±|\\+/?-))\\s*[\\d.,].*");

    /** Where a second number begins. */
    Pattern NEXT_NUMBER = Pattern.compile("\\s+(?=[\\d½¼¾⅓⅔⅛⅜⅝⅞])|(?<=['’′])(?=\\d)");

    /** Seven feet four, the inches left unsaid. */
    Pattern FEET = Pattern.compile(
            "(?i)^(.*\\d\\s*(?:ft|feet|foot|['’′])\\.?\\s*)(\\d+(?:[ .\\d/½¼¾⅛⅜⅝⅞]*|-\\d+/\\d+)|[½¼¾⅛⅜⅝⅞])$");

    /** One in so many; {@code 1 in 50 mm} is none, nor a clock's 1:05. */
    Pattern RATIO = Pattern.compile("(?i)(?:one|1)\\s*(?:in|:)\\s*([\\d.,  ']+)");

    /** The unit of a plain number. */
    WrittenUnit PLAIN = UnitText.read("").orElseThrow();

    /**
     * A number was found.
     *
     * @param value the number, finite
     * @param step how much one more in its last digit is, in its unit; 0 where it was not rounded by hand
     * @param unit the unit behind it; empty where none was written
     * @param sum what was typed where that was a sum, one in so many, or several units, which then stand in it too; else empty
     */
    record Amount(double value, double step, Optional<WrittenUnit> unit, String sum) implements AnswerText {}

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
        String cleaned = AnswerCleanup.answer(typed);
        Matcher feet = FEET.matcher(cleaned);
        String text = feet.matches() ? feet.group(1) + feet.group(2) + " in" : cleaned;
        if (text.isEmpty()) {
            return new NotRead("Type a number, with a unit behind it.");
        }
        try {
            AnswerText plain = ratio(text).orElseGet(() -> pieces(text));
            // A range such as 5 - 6 stays one: only what has more in it than a hyphen is a sum.
            return plain instanceof NotRead ? SumText.read(text).orElse(plain) : plain;
        } catch (NumberText.DoubtException e) {
            return new NotRead(e.words());
        }
    }

    /** A slope or share as people write it: 1 in 50, 1:50. */
    private static Optional<AnswerText> ratio(String text) {
        Matcher ratio = RATIO.matcher(text);
        if (!ratio.matches()) {
            return Optional.empty();
        }
        Optional<NumberText> below =
                NumberText.read(ratio.group(1)).filter(number -> number.rest().isEmpty());
        return below.filter(number -> number.value() > 0).map(number -> {
            double share = 1 / number.value();
            return new Amount(share, share * number.step() / number.value(), Optional.of(PLAIN), text.strip());
        });
    }

    private static AnswerText pieces(String text) {
        Optional<NumberText> number = NumberText.read(text);
        if (text.matches("(?i)between\\b.*")
                || number.filter(n -> RANGE.matcher(n.rest()).matches()).isPresent()) {
            return new NotRead("That is a range. Settle on one number; near enough counts as right.");
        }
        if (number.isEmpty()) {
            return new NotRead("“" + text + "” does not begin with a number.");
        }
        double value = number.get().value();
        double step = number.get().step();
        String[] parts = NEXT_NUMBER.split(number.get().rest(), 2);
        if (parts[0].isBlank()) {
            return parts.length == 1 ? new Amount(value, step, Optional.empty(), "") : several();
        }
        Optional<WrittenUnit> unit = UnitText.read(parts[0]);
        if (unit.isEmpty()) {
            return new NotRead("“" + parts[0].strip() + "” is no unit known here.");
        }
        return parts.length == 1 ? new Amount(value, step, unit, "") : sum(text, value, unit.get(), parts[1]);
    }

    /** Feet and inches, hours and minutes: a smaller unit of the same kind behind the first. */
    private static AnswerText sum(String text, double first, WrittenUnit unit, String more) {
        if (pieces(more) instanceof Amount second
                && second.unit().isPresent()
                && second.unit().get().fits(unit)
                && !unit.isTemperature()
                && second.unit().get().to(unit, 1) < 1
                && second.value() >= 0) {
            double added = second.unit().get().to(unit, second.value());
            double step = second.unit().get().to(unit, second.step());
            return new Amount(first < 0 ? first - added : first + added, step, Optional.of(unit), text.strip());
        }
        return several();
    }

    private static AnswerText several() {
        return new NotRead("There is more than one number. Give one, with its unit.");
    }
}
