package loftcoil.engine.words;

import java.util.Arrays;
import java.util.Comparator;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Short texts of our own in which a metric measure stands without a hole for it: what is allowed for a field, one line of help, the
 * name of an option, a refusal. Not for prose: a lesson's sentences are left as they were written.
 */
final class MetricText {

    private static final String UNITS = Arrays.stream(MeasureKind.values())
            .filter(kind -> !kind.us().isAlike() && !kind.unit().isEmpty())
            .map(MeasureKind::unit)
            .distinct()
            .sorted(Comparator.comparingInt(String::length).reversed())
            .map(Pattern::quote)
            .collect(Collectors.joining("|"));

    private static final String NUMBER = "[-−]?\\d+(?:\\.\\d+)?";

    /** What follows a difference of two temperatures, and no temperature. */
    private static final Pattern DIFFERENCE = Pattern.compile(
            " (?:apart|warmer|hotter|cooler|colder|more|less|higher|lower|below boiling|too high|too low)\\b");

    /** What somebody typed stands between quotation marks, and stays. */
    private static final Pattern MEASURED = Pattern.compile("“[^”]*”|\"[^\"]*\"|(?<![\\w.])(?:(" + NUMBER
            + ")((?: to less than| to| and| or),? ))?(" + NUMBER + ") (" + UNITS + ")(?![\\w/²³])");

    private MetricText() {}

    static String in(Units units, String text) {
        StringBuilder out = new StringBuilder();
        Matcher found = MEASURED.matcher(text);
        int from = 0;
        while (found.find()) {
            out.append(text, from, found.start());
            out.append(found.group(4) == null ? found.group() : measured(units, found, text));
            from = found.end();
        }
        return out.append(text.substring(from)).toString();
    }

    private static String measured(Units units, Matcher found, String text) {
        MeasureKind known = MeasureKind.ofUnit(found.group(4)).orElseThrow();
        boolean apart = known == MeasureKind.TEMP_C
                && DIFFERENCE.matcher(text).region(found.end(), text.length()).lookingAt();
        MeasureKind kind = apart ? MeasureKind.TEMP_DIFF_K : known;
        String first = Optional.ofNullable(found.group(1))
                .map(number -> units.of(measure(number, kind).withoutUnit()) + found.group(2))
                .orElse("");
        return first + units.of(measure(found.group(3), kind));
    }

    /** With no more decimals than were said. */
    private static Measure measure(String number, MeasureKind kind) {
        String plain = number.replace('−', '-');
        int said = plain.contains(".") ? plain.length() - plain.indexOf('.') - 1 : 0;
        double value = Double.parseDouble(plain);
        int finer = kind.us().isTape() ? 0 : Math.max(0, said - kind.decimals());
        return new Measure(value, kind).finer(finer);
    }
}
