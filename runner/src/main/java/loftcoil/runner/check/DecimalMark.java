package loftcoil.runner.check;

import java.util.regex.Pattern;

/** Settles which of the points and commas in a number is the decimal one. */
final class DecimalMark {

    private static final Pattern IN_DOUBT = Pattern.compile("[1-9]\\d{0,2},\\d{3}");

    private DecimalMark() {}

    /**
     * The same digits with at most one mark, a point.
     *
     * @throws NumberText.DoubtException where two readings are possible, or none
     */
    static String settle(String digits) {
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
        throw new NumberText.DoubtException(
                "“" + digits + "” is not one number. Write it with one decimal point and no other marks.");
    }

    private static NumberText.DoubtException doubt(String digits) {
        String without = digits.replace(",", "");
        String point = digits.replace(',', '.').replaceAll("0+$", "").replaceAll("\\.$", "");
        return new NumberText.DoubtException(
                "“" + digits + "” can mean " + without + " or " + point + ". Write it without a comma.");
    }

    private static int count(String text, char mark) {
        return (int) text.chars().filter(c -> c == mark).count();
    }
}
