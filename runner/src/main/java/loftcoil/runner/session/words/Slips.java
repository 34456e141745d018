package loftcoil.runner.session.words;

import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Slips of who never wrote Java before, which the compiler only meets by what follows from them. */
final class Slips {

    private static final Pattern TWO_POINTS = Pattern.compile("(?<![\\w.])\\d+\\.\\d+\\.\\d[\\d.]*");
    private static final Pattern WITH_UNIT = Pattern.compile(
            "(?<![\\w.])(\\d[\\d.]*)\\s*(°\\s?[CFK]?|%|mm|cm|km|m²|m³|m2|m3|m|kW|W|kg|g|L|kPa|Pa|min|ft|in|gal|h|s|K|C)(?![\\w(\"])");
    private static final Pattern PRINTS =
            Pattern.compile("symbol:\\s+method (print|println|printf|printline|log|echo|say|write)\\(");
    private static final Map<String, String> NUMBERS = Map.ofEntries(
            Map.entry("zero", "0"),
            Map.entry("one", "1"),
            Map.entry("two", "2"),
            Map.entry("three", "3"),
            Map.entry("four", "4"),
            Map.entry("five", "5"),
            Map.entry("six", "6"),
            Map.entry("seven", "7"),
            Map.entry("eight", "8"),
            Map.entry("nine", "9"),
            Map.entry("ten", "10"),
            Map.entry("twelve", "12"),
            Map.entry("twenty", "20"),
            Map.entry("hundred", "100"));

    private Slips() {}

    /** A number with two points in it. */
    static Optional<String> twoPoints(Finding finding) {
        Matcher number = TWO_POINTS.matcher(code(finding.line()));
        return number.find()
                ? Optional.of("This number is written wrongly: " + number.group()
                        + " has two points. Numbers look like 12, " + "0.75 or 1.5e-6.")
                : Optional.empty();
    }

    /** A unit behind a number. */
    static Optional<String> unit(Finding finding) {
        Matcher unit = WITH_UNIT.matcher(code(finding.line()));
        boolean meant = finding.isAny(
                "illegal.char", "expected", "expected2", "expected3", "not.stmt", "illegal.start.of.expr");
        return meant && unit.find()
                ? Optional.of("Java takes the number alone: write " + unit.group(1) + ", and the unit "
                        + unit.group(2).strip() + " as a remark behind // at the end of the line.")
                : Optional.empty();
    }

    /** A text whose opening quote is missing: the line has one quote and the compiler stumbles before it. */
    static Optional<String> openingQuote(Finding finding) {
        String line = finding.line();
        long quotes = line.chars().filter(c -> c == '"').count();
        int start = finding.source().lastIndexOf('\n', finding.at() - 1) + 1;
        boolean before = finding.at() - start <= line.lastIndexOf('"');
        return quotes % 2 == 1 && before && !finding.is("unclosed.str.lit")
                ? Optional.of("A quote \" is missing on this line: a text begins with one and ends with one.")
                : Optional.empty();
    }

    /** A closing brace with no opening one before it. */
    static Optional<String> braceTooMany(Finding finding) {
        if (finding.at() >= finding.source().length() || finding.source().charAt(finding.at()) != '}') {
            return Optional.empty();
        }
        String before = code(finding.source().substring(0, finding.at()));
        long open = before.chars().filter(c -> c == '{').count();
        long closed = before.chars().filter(c -> c == '}').count();
        return closed >= open
                ? Optional.of("There is a closing brace } too many here: each needs an opening { before it.")
                : Optional.empty();
    }

    /** Printing without naming where to. */
    static Optional<String> printing(Finding finding) {
        return PRINTS.matcher(finding.message()).find()
                ? Optional.of("To print, write System.out.println(…) with what is to be printed between its brackets.")
                : Optional.empty();
    }

    /** A number in words. */
    static Optional<String> numberInWords(Finding finding) {
        String digits = NUMBERS.get(finding.inMessage("symbol:\\s+variable (\\w+)"));
        return digits == null ? Optional.empty() : Optional.of("Java takes numbers in digits: " + digits + ".");
    }

    /** Java without its remarks and texts. */
    private static String code(String java) {
        return java.replaceAll("\"(?:[^\"\\\\\n]++|\\\\.)*+\"", "\"\"").replaceAll("//.*", "");
    }
}
