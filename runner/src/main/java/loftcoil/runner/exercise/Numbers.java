package loftcoil.runner.exercise;

import java.time.Month;
import java.time.format.TextStyle;
import java.util.Collections;
import java.util.HashSet;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import loftcoil.engine.words.Measure;
import loftcoil.engine.words.MeasureKind;
import loftcoil.engine.words.Numeral;
import loftcoil.engine.words.Units;

/**
 * The numbers of one learner in one exercise. Text and Java get the same digits.
 *
 * @param values value by Java name
 */
public record Numbers(SortedMap<String, Double> values) {

    /** What stands for a number in a text. */
    static final Pattern PLACE = Pattern.compile("\\{\\{\\s*(\\w+)( as a month)?\\s*}}");

    /** What a sum comes to stands here, as the text of a worked solution goes on with it. */
    public static final Pattern SUM = Pattern.compile("\\{\\{=([^}]*)}}");

    private static final Pattern NAME = Pattern.compile("[A-Za-z]\\w*");

    /** A temperature, and no difference of two, of which no other degrees are said. */
    private static final Pattern DEGREES = Pattern.compile("(?<![\\w.])([-−]?\\d+(?:\\.\\d+)?) °C\\b"
            + "(?! \\(|, \\d+ °F| (?:apart|warmer|hotter|cooler|colder|more|less|higher|lower)\\b)");

    private static final Pattern SLOPE = Pattern.compile("(?<![\\w.])(\\d+(?:\\.\\d+)?) mm for each metre(?! \\()");

    /** Keeps its own copies. */
    public Numbers {
        values = Collections.unmodifiableSortedMap(new TreeMap<>(values));
    }

    /** The given numbers. */
    public static Numbers of(Map<String, Double> values) {
        return new Numbers(new TreeMap<>(values));
    }

    /** The text with {@code {{name}}} replaced, and each name in {@code {{= sum}}}; names that are none of these stay as they are. */
    public String fill(String text) {
        String sums = SUM.matcher(text)
                .replaceAll(sum -> Matcher.quoteReplacement("{{="
                        + NAME.matcher(sum.group(1)).replaceAll(name -> number(name.group(), name.group())) + "}}"));
        return PLACE.matcher(sums)
                .replaceAll(found -> Matcher.quoteReplacement(
                        found.group(2) == null
                                ? number(found.group(1), found.group())
                                : month(found.group(1), found.group())));
    }

    private String month(String name, String otherwise) {
        Double value = values.get(name);
        return value == null ? otherwise : Month.of(value.intValue()).getDisplayName(TextStyle.FULL, Locale.ENGLISH);
    }

    private String number(String name, String otherwise) {
        Double value = values.get(name);
        return value == null ? otherwise : Numeral.typed(value);
    }

    /** A question's text: {@link #fill}, and each temperature and slope stands in both kinds of units where it is first said. */
    String asked(String text) {
        String filled = SLOPE.matcher(fill(text))
                .replaceAll(found -> Matcher.quoteReplacement(found.group() + " ("
                        + Units.US.of(new Measure(Double.parseDouble(found.group(1)), MeasureKind.SLOPE_MM_PER_M))
                        + ")"));
        Set<String> said = new HashSet<>();
        return DEGREES.matcher(filled).replaceAll(found -> {
            String metric = found.group();
            boolean again = !said.add(metric) || filled.contains(metric + " (");
            double degrees = Double.parseDouble(Numeral.hyphened(found.group(1)));
            return Matcher.quoteReplacement(
                    again ? metric : metric + " (" + Units.US.of(new Measure(degrees, MeasureKind.TEMP_C)) + ")");
        });
    }

    /** The Java with a declaration of each number in front; empty where the Java is. */
    public String before(String java) {
        return java.isEmpty() || values.isEmpty() ? java : declarations() + "\n" + java;
    }

    /** A declaration of each number, on one line. */
    String declarations() {
        return values.entrySet().stream()
                .map(value -> "double " + value.getKey() + " = " + value.getValue() + ";")
                .collect(Collectors.joining(" "));
    }
}
