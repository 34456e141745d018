package loftcoil.runner.check;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Reads the number at the head of a text: decimal point or comma, thousands in groups, powers of ten, fractions as on a
 * pipe.
 *
 * @param value the number
 * @param step how much one more in the last digit that counts is: 0.1 for 2.3, 1 for 23, 10 for 290, a sixteenth for 3/16. Noughts at
 *     the end of a whole number count up to its second digit
 * @param rest what stands behind it
 */
record NumberText(double value, double step, String rest) {

    private static final String GROUPED = "\\d{1,3}(?:[ '’]\\d{3})+(?!\\d)(?:[.,]\\d+)?";
    private static final String PLAIN = "\\d+(?:[.,]\\d+)*(?:[.,](?![.\\d]))?|[.,]\\d+";
    private static final Pattern NUMBER = Pattern.compile(
            "([+-]?)\\s?(" + GROUPED + "|" + PLAIN + ")"
                    + "(?:[eE]([+-]?\\d{1,4})(?!\\d)|\\s?[×x*·⋅]\\s?10(?:\\^\\(?|(?=[⁻⁰¹²³⁴⁵⁶⁷⁸⁹]))([+-]?\\d{1,3}|[⁻⁰¹²³⁴⁵⁶⁷⁸⁹]{1,4})\\)?)?");
    private static final Pattern FRACTION =
            Pattern.compile("([+-]?)\\s?(?:(\\d{1,4})[ -])?(\\d{1,4})\\s?[/⁄]\\s?(\\d{1,4})(?![\\d.,/])");
    private static final Pattern ONE_SIGN = Pattern.compile("([+-]?)\\s?(\\d{0,4})\\s?([½¼¾⅓⅔⅛⅜⅝⅞])");
    private static final Pattern IN_DOUBT = Pattern.compile("[1-9]\\d{0,2},\\d{3}");
    private static final String SIGNS = "½¼¾⅓⅔⅛⅜⅝⅞";
    private static final double[] SIGN_VALUES = {0.5, 0.25, 0.75, 1.0 / 3, 2.0 / 3, 0.125, 0.375, 0.625, 0.875};

    /** Thrown inside this room where a number can be taken in two ways or is none. */
    static final class DoubtException extends RuntimeException {
        private static final long serialVersionUID = 1L;

        private final String words;

        DoubtException(String words) {
            super(words);
            this.words = words;
        }

        String words() {
            return words;
        }
    }

    /**
     * The number the text begins with; nothing where it begins with none.
     *
     * @throws DoubtException where it does but can be understood in two ways
     */
    static Optional<NumberText> read(String text) {
        Matcher sign = ONE_SIGN.matcher(text);
        if (sign.lookingAt()) {
            double whole = sign.group(2).isEmpty() ? 0 : Integer.parseInt(sign.group(2));
            double part = SIGN_VALUES[SIGNS.indexOf(sign.group(3))];
            return number(sign.group(1), whole + part, signStep(part), text.substring(sign.end()));
        }
        Matcher fraction = FRACTION.matcher(text);
        if (fraction.lookingAt()) {
            double below = Integer.parseInt(fraction.group(4));
            if (below == 0) {
                throw new DoubtException("A fraction cannot have 0 below the stroke.");
            }
            double whole = fraction.group(2) == null ? 0 : Integer.parseInt(fraction.group(2));
            double value = whole + Integer.parseInt(fraction.group(3)) / below;
            return number(fraction.group(1), value, 1 / below, text.substring(fraction.end()));
        }
        Matcher number = NUMBER.matcher(text);
        return number.lookingAt() ? decimal(number, text) : Optional.empty();
    }

    private static Optional<NumberText> decimal(Matcher number, String text) {
        String digits = number.group(2);
        if (digits.endsWith(".") || digits.endsWith(",")) {
            digits = digits.substring(0, digits.length() - 1);
        }
        String power = number.group(3) != null ? number.group(3) : lowered(number.group(4));
        String plain = settled(digits) + (power == null ? "" : "e" + power);
        return number(number.group(1), Double.parseDouble(plain), step(plain), text.substring(number.end()));
    }

    private static Optional<NumberText> number(String sign, double size, double step, String rest) {
        if (!Double.isFinite(size)) {
            throw new DoubtException("That number is too large to work with.");
        }
        return Optional.of(new NumberText(sign.equals("-") ? -size : size, step, rest));
    }

    private static double signStep(double part) {
        double step = 1.0 / 8;
        for (double larger : new double[] {1.0 / 4, 1.0 / 3, 1.0 / 2}) {
            if (Math.abs(part / larger - Math.rint(part / larger)) < 1e-9) {
                step = larger;
            }
        }
        return step;
    }

    private static double step(String plain) {
        BigDecimal typed = new BigDecimal(plain);
        int power = -typed.scale();
        if (plain.matches("\\d+")) {
            String digits = plain.replaceFirst("^0+(?=\\d)", "");
            int noughts = digits.length() - digits.replaceFirst("0+$", "").length();
            power = Math.min(noughts, Math.max(0, digits.length() - 2));
        }
        return Math.pow(10, power);
    }

    private static @Nullable String lowered(@Nullable String raised) {
        if (raised == null) {
            return null;
        }
        StringBuilder plain = new StringBuilder();
        for (int i = 0; i < raised.length(); i++) {
            int digit = "⁰¹²³⁴⁵⁶⁷⁸⁹".indexOf(raised.charAt(i));
            plain.append(digit >= 0 ? (char) ('0' + digit) : raised.charAt(i) == '⁻' ? '-' : raised.charAt(i));
        }
        if (!plain.toString().matches("[+-]?\\d+")) {
            throw new DoubtException("The power of ten cannot be read.");
        }
        return plain.toString();
    }

    /**
     * The same digits with at most one mark, a point.
     *
     * @throws DoubtException where two readings are possible, or none
     */
    private static String settled(String digits) {
        String joined = digits.replaceAll("[ '’]", "");
        int points = count(joined, '.');
        int commas = count(joined, ',');
        if (points <= 1 && commas == 0) {
            return joined;
        }
        if (points == 0 && commas == 1) {
            if (IN_DOUBT.matcher(digits).matches()) {
                throw doubt(digits);
            }
            return joined.replace(',', '.');
        }
        boolean commaLast = joined.lastIndexOf(',') > joined.lastIndexOf('.');
        String whole = commaLast ? "\\." : ",";
        String mark = commaLast ? "," : "\\.";
        String groups = "\\d{1,3}(?:" + whole + "\\d{3})+";
        if (points > 0 && commas > 0 && joined.matches(groups + mark + "\\d*")) {
            return joined.replace(commaLast ? "." : ",", "").replace(',', '.');
        }
        if (joined.matches("\\d{1,3}(?:,\\d{3}){2,}") || joined.matches("\\d{1,3}(?:\\.\\d{3}){2,}")) {
            return joined.replaceAll("[.,]", "");
        }
        throw new DoubtException(
                "“" + digits + "” is not one number. Write it with one decimal point and no other marks.");
    }

    private static DoubtException doubt(String digits) {
        String without = digits.replace(",", "");
        String point = digits.replace(',', '.').replaceAll("0+$", "").replaceAll("\\.$", "");
        return new DoubtException(
                "“" + digits + "” can mean " + without + " or " + point + ". Write it without a comma.");
    }

    private static int count(String text, char mark) {
        return (int) text.chars().filter(c -> c == mark).count();
    }
}
