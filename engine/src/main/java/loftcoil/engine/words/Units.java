package loftcoil.engine.words;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** Whose units measures are written in. The table of both is {@link MeasureKind}. */
public enum Units {
    /** Metres, litres, kilograms, degrees Celsius, watts. */
    METRIC("metric units"),
    /** Feet and inches, US gallons, pounds, degrees Fahrenheit, British thermal units. */
    US("US customary units");

    private final String words;

    Units(String words) {
        this.words = words;
    }

    /** The units of that name, whatever the case of its letters. */
    public static Optional<Units> named(String name) {
        for (Units units : values()) {
            if (units.name().equals(name.toUpperCase(Locale.ROOT))) {
                return Optional.of(units);
            }
        }
        return Optional.empty();
    }

    /** Their name in files, options and addresses. */
    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** How a sheet names them. */
    public String words() {
        return words;
    }

    /** The measure with its unit. */
    public String of(Measure measure) {
        String unit = measure.bare() ? "" : unit(measure.kind());
        // A degree of angle stands close, as in 45°.
        boolean close = unit.isEmpty() || measure.kind() == MeasureKind.ANGLE_DEG;
        return number(measure) + (close ? "" : " ") + unit;
    }

    /** The number alone, for a column whose heading has the unit; lengths on a tape keep theirs. */
    public String number(Measure measure) {
        return this == US ? measure.kind().us().number(measure) : measure.number();
    }

    /** The number with its sign, a plus too; nought has none. */
    public String signed(Measure measure) {
        String number = number(measure);
        return measure.value() > 0 && number.chars().anyMatch(digit -> digit >= '1' && digit <= '9')
                ? "+" + number
                : number;
    }

    /** What stands behind the number; empty where nothing does. */
    public String unit(MeasureKind kind) {
        if (kind == MeasureKind.TAPE_M) {
            return "";
        }
        return alike(kind) ? kind.unit() : kind.us().unit();
    }

    /** The unit of a number that is typed without one, and of an axis: that of {@link #shown}. */
    public String typedUnit(MeasureKind kind) {
        return alike(kind) ? kind.unit() : kind.us().typed();
    }

    /** A number of that kind in the unit of {@link #typedUnit}. */
    public double shown(MeasureKind kind, double metric) {
        return alike(kind) ? metric : kind.us().of(metric);
    }

    /** The same back in the metric unit of its kind. */
    public double metric(MeasureKind kind, double shown) {
        return alike(kind) ? shown : kind.us().metric(shown);
    }

    /** The words with their measures written out. */
    public String words(MeasuredText text) {
        return text.parts().stream()
                .map(part -> part instanceof Measure measure ? of(measure) : part.metric())
                .collect(Collectors.joining());
    }

    /**
     * A short text of the engine's own that has metric measures in it, such as what is allowed for a field, its help, an option or a
     * refusal. What stands between quotation marks was typed by somebody and stays.
     */
    public String said(String metric) {
        return this == METRIC ? metric : MetricText.in(this, metric);
    }

    private boolean alike(MeasureKind kind) {
        return this == METRIC || kind.us().isAlike();
    }
}
