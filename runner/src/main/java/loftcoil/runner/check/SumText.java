package loftcoil.runner.check;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import loftcoil.engine.words.Numeral;
import loftcoil.runner.unit.UnitText;
import loftcoil.runner.unit.WrittenUnit;

/**
 * Reads a sum typed in as an answer, such as {@code 0.1*0.028*998/0.001 = 2794}: numbers, brackets, the four operations, powers, roots and natural logarithms,
 * then what it comes to, if the person says so, and a unit at the very end. Products before sums, powers before products, as on paper.
 */
final class SumText {

    private static final String OPERATOR = "[\\d)\\]²³πi]\\s*[*×·⋅/÷+^xX]\\s*[\\d(\\[.,π√-]";
    /** Between two numbers a sign that makes a sum of them for certain. */
    private static final Pattern CERTAIN = Pattern.compile("^(?=[-\\d(\\[.,πp√sl]).*?" + OPERATOR);

    private static final Pattern SIGN = Pattern.compile(OPERATOR + "|[=≈(√]");
    private static final Pattern TIMES = Pattern.compile("[*×·⋅]|[xX](?=[\\s\\d(.])");
    private static final Pattern NUMBER =
            Pattern.compile("(?:\\d+(?:[.,]\\d+)?|[.,]\\d+)(?:[eE][+-]?\\d{1,3}(?!\\d))?");
    /** How far what somebody says a sum comes to may be from it besides rounding. */
    private static final double SLACK = 1e-9;

    private final String text;
    private int at;

    private static final class NoSumException extends RuntimeException {
        private static final long serialVersionUID = 1L;
    }

    private SumText(String text) {
        this.text = text;
    }

    /** The answer a sum comes to, or what is wrong with the sum; nothing where it is none. */
    static Optional<AnswerText> read(String typed) {
        String text = Numeral.hyphened(
                typed.replaceAll("[\\s\\p{Z}\\p{Cc}\\p{Cf}]+", " ").strip());
        if (!SIGN.matcher(text).find()) {
            return Optional.empty();
        }
        SumText sum = new SumText(text);
        try {
            double value = sum.terms();
            return Optional.of(sum.result(value));
        } catch (NoSumException none) {
            return CERTAIN.matcher(text).find() ? Optional.of(sum.broken()) : Optional.empty();
        }
    }

    private AnswerText.NotRead broken() {
        String rest = text.substring(at).strip();
        return new AnswerText.NotRead("That looks like a sum, but it cannot be read "
                + (rest.isEmpty() ? "to its end" : "from “" + rest + "” on")
                + ". It takes numbers, + − * / ^ and brackets, and a unit at its very end.");
    }

    private AnswerText result(double value) {
        if (!Double.isFinite(value)) {
            return new AnswerText.NotRead("That sum has no value: it divides by 0 or grows out of all bounds.");
        }
        String asTyped = text.substring(0, at).strip();
        Optional<WrittenUnit> unit = Optional.empty();
        double step = 0;
        double given = value;
        boolean saysWhat = taken('=') || taken('≈');
        blanks();
        if (saysWhat && at < text.length()) {
            Optional<NumberText> said = NumberText.read(text.substring(at));
            if (said.isEmpty()) {
                throw new NoSumException();
            }
            given = said.get().value();
            step = said.get().step();
            double off = Math.abs(given - value);
            if (off >= step && off > SLACK * Math.abs(value)) {
                return new AnswerText.NotRead("“" + asTyped + "” comes to " + Numeral.shown(value, 6) + ", not to "
                        + Numeral.shown(given, 6) + ". Say which of the two is meant.");
            }
            unit = unit(said.get().rest());
        } else {
            unit = unit(text.substring(at));
        }
        return new AnswerText.Amount(given, step, unit, asTyped + " = " + Numeral.shown(given, 6));
    }

    private static Optional<WrittenUnit> unit(String rest) {
        String name = rest.replaceFirst("[.!;,]+$", "").strip();
        if (name.isEmpty()) {
            return Optional.empty();
        }
        Optional<WrittenUnit> unit = UnitText.read(name);
        if (unit.isEmpty()) {
            throw new NoSumException();
        }
        return unit;
    }

    private double terms() {
        double value = factors();
        while (true) {
            if (taken('+')) {
                value += factors();
            } else if (taken('-')) {
                value -= factors();
            } else {
                return value;
            }
        }
    }

    private double factors() {
        double value = power();
        while (true) {
            if (takenTimes()) {
                value *= power();
            } else if (taken('÷') || takenStroke()) {
                value /= power();
            } else {
                return value;
            }
        }
    }

    private double power() {
        double base = single();
        if (taken('²')) {
            return base * base;
        } else if (taken('³')) {
            return base * base * base;
        }
        // A power of a power binds to the right, as on paper.
        return taken('^') ? Math.pow(base, power()) : base;
    }

    private double single() {
        if (taken('-')) {
            return -power();
        }
        if (taken('(') || taken('[')) {
            double value = terms();
            if (!taken(')') && !taken(']')) {
                throw new NoSumException();
            }
            return value;
        }
        blanks();
        if (text.startsWith("√", at) || text.startsWith("sqrt", at)) {
            at += text.startsWith("√", at) ? 1 : 4;
            return Math.sqrt(single());
        }
        if (text.startsWith("ln", at)) {
            at += 2;
            return Math.log(single());
        }
        if (text.startsWith("π", at) || text.startsWith("pi", at)) {
            at += text.startsWith("π", at) ? 1 : 2;
            return Math.PI;
        }
        Matcher number = NUMBER.matcher(text).region(at, text.length());
        if (!number.lookingAt()) {
            throw new NoSumException();
        }
        at = number.end();
        return Double.parseDouble(number.group().replace(',', '.'));
    }

    private boolean takenTimes() {
        blanks();
        Matcher times = TIMES.matcher(text).region(at, text.length());
        if (!times.lookingAt()) {
            return false;
        }
        at = times.end();
        return true;
    }

    /** A stroke before a letter belongs to a unit: 3*4 /min. */
    private boolean takenStroke() {
        blanks();
        if (!text.startsWith("/", at) || text.substring(at + 1).stripLeading().matches("(?s)\\p{L}.*")) {
            return false;
        }
        at++;
        return true;
    }

    private boolean taken(char sign) {
        blanks();
        if (at >= text.length() || text.charAt(at) != sign) {
            return false;
        }
        at++;
        return true;
    }

    private void blanks() {
        while (at < text.length() && text.charAt(at) == ' ') {
            at++;
        }
    }
}
