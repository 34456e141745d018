package loftcoil.runner.handout;

import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import loftcoil.engine.words.Measure;
import loftcoil.engine.words.MeasureKind;

/**
 * Text that the engine writes with metric numbers in it. For readers of US units each number has theirs in brackets behind it, so
 * that both are there to compare with a maker's papers.
 */
final class BesideMetric {

    private static final Map<String, MeasureKind> KINDS = Map.ofEntries(
            Map.entry("°C", MeasureKind.TEMP_C),
            Map.entry("kg", MeasureKind.MASS_KG),
            Map.entry("L", MeasureKind.VOLUME_L),
            Map.entry("litres", MeasureKind.VOLUME_L),
            Map.entry("L/min", MeasureKind.FLOW_L_PER_MIN),
            Map.entry("mm", MeasureKind.SMALL_LENGTH_MM),
            Map.entry("m", MeasureKind.LENGTH_M),
            Map.entry("metres", MeasureKind.LENGTH_M),
            Map.entry("W", MeasureKind.POWER_W),
            Map.entry("kPa", MeasureKind.PRESSURE_PA),
            Map.entry("kW", MeasureKind.POWER_W));
    private static final Map<String, Integer> THOUSANDS = Map.of("kW", 1000, "kPa", 1000);
    private static final Pattern NUMBER = Pattern.compile(
            "(?<![\\d.])(?:(−?\\d+(?:\\.\\d+)?)( and | to | or |–))?(−?\\d+(?:\\.\\d+)?)[ \u00a0](°C|kg|L/min|L|litres|mm|metres|m|kW|kPa|W)(?![\\p{L}\\d/²³])");
    private static final Pattern DIFFERENCE =
            Pattern.compile("^ (?:below|above|less|more|warmer|colder|hotter|cooler)\\b.*");

    private BesideMetric() {}

    /** The text; for US readers with brackets. */
    static String in(Units units, String text) {
        if (units == Units.METRIC) {
            return text;
        }
        MeasureText us = new MeasureText(Units.US);
        Matcher number = NUMBER.matcher(text);
        StringBuilder out = new StringBuilder();
        while (number.find()) {
            String after = text.substring(number.end());
            String first = number.group(1) == null
                    ? ""
                    : us.number(measure(number.group(1), number.group(4), after)) + number.group(2);
            String own = us.of(measure(number.group(3), number.group(4), after));
            number.appendReplacement(out, Matcher.quoteReplacement(number.group() + " (" + first + own + ")"));
        }
        return number.appendTail(out).toString();
    }

    private static Measure measure(String number, String unit, String after) {
        double value = Double.parseDouble(number.replace('−', '-'));
        MeasureKind kind = KINDS.getOrDefault(unit, MeasureKind.NONE);
        boolean difference =
                kind == MeasureKind.TEMP_C && DIFFERENCE.matcher(after).matches();
        return new Measure(value * THOUSANDS.getOrDefault(unit, 1), difference ? MeasureKind.TEMP_DIFF_K : kind);
    }
}
