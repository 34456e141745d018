package loftcoil.runner.check;

import java.util.Optional;
import java.util.regex.Pattern;
import loftcoil.runner.unit.UnitText;
import loftcoil.runner.unit.WrittenUnit;

/** Makes one quantity of the pieces of an answer. */
final class AnswerPieces {

    private static final Pattern RANGE = Pattern.compile(
            "(?is)^(?:\\s*(?:-|to\\b|\\.\\.+|…|or\\b|and\\b|±|\\+/?-)|\\s*[^\\d\\s]+\\s+(?:to|or|and|-|±|\\+/?-))\\s*[\\d.,].*");
    private static final Pattern NEXT_NUMBER = Pattern.compile("\\s+(?=[\\d½¼¾⅓⅔⅛⅜⅝⅞])|(?<=['’′])(?=\\d)");

    private AnswerPieces() {}

    static AnswerText read(String text) {
        Optional<NumberText> number = NumberText.read(text);
        if (text.matches("(?i)between\\b.*")
                || number.filter(n -> RANGE.matcher(n.rest()).matches()).isPresent()) {
            return new AnswerText.NotRead("That is a range. Settle on one number; near enough counts as right.");
        }
        if (number.isEmpty()) {
            return new AnswerText.NotRead("“" + text + "” does not begin with a number.");
        }
        double value = number.get().value();
        String[] parts = NEXT_NUMBER.split(number.get().rest(), 2);
        if (parts[0].isBlank()) {
            return parts.length == 1 ? new AnswerText.Amount(value, Optional.empty()) : several();
        }
        Optional<WrittenUnit> unit = UnitText.read(parts[0]);
        if (unit.isEmpty()) {
            return new AnswerText.NotRead("“" + parts[0].strip() + "” is no unit known here.");
        }
        return parts.length == 1 ? new AnswerText.Amount(value, unit) : sum(value, unit.get(), parts[1]);
    }

    /** Feet and inches, hours and minutes: a smaller unit of the same kind behind the first. */
    private static AnswerText sum(double first, WrittenUnit unit, String more) {
        if (read(more) instanceof AnswerText.Amount second
                && second.unit().isPresent()
                && second.unit().get().fits(unit)
                && !unit.isTemperature()
                && second.unit().get().to(unit, 1) < 1
                && second.value() >= 0) {
            double added = second.unit().get().to(unit, second.value());
            return new AnswerText.Amount(first < 0 ? first - added : first + added, Optional.of(unit));
        }
        return several();
    }

    private static AnswerText several() {
        return new AnswerText.NotRead("There is more than one number. Give one, with its unit.");
    }
}
