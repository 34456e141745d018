package loftcoil.runner.handout;

import java.util.stream.Collectors;
import loftcoil.engine.words.Measure;
import loftcoil.engine.words.MeasureKind;
import loftcoil.engine.words.MeasuredText;

/** Writes measures, and words with measures in them, in the units of the reader. */
final class MeasureText {

    /** Keeps a number and its unit on one line. */
    private static final char TIED = '\u00a0';

    private final Units units;

    MeasureText(Units units) {
        this.units = units;
    }

    Units units() {
        return units;
    }

    /** The measure with its unit. */
    String of(Measure measure) {
        String unit = unit(measure.kind());
        String number = number(measure);
        // A degree of angle stands close, as in 45°.
        boolean close = unit.isEmpty() || measure.kind() == MeasureKind.ANGLE_DEG;
        return (number + (close ? "" : " ") + unit).replace(' ', TIED);
    }

    /** The number alone, for a column whose heading has the unit; feet and inches keep theirs. */
    String number(Measure measure) {
        return units == Units.US ? UsMeasure.number(measure) : MetricMeasure.number(measure);
    }

    /** What stands behind the number; empty where nothing does. */
    String unit(MeasureKind kind) {
        return units == Units.US ? UsMeasure.unit(kind) : MetricMeasure.unit(kind);
    }

    /** Unit to name over a column that is filled in by hand; empty where there is none. */
    String unitToWrite(MeasureKind kind) {
        return units == Units.US ? UsMeasure.toWrite(kind) : MetricMeasure.unit(kind);
    }

    /** From the one to the other; once where both read alike. */
    String between(Measure low, Measure high) {
        String from = of(low);
        String to = of(high);
        if (from.equals(to)) {
            return to;
        }
        return (unit(low.kind()).isEmpty() ? from : number(low)) + " to " + to;
    }

    /** The words as CommonMark, measures written out. */
    String words(MeasuredText words) {
        return words.parts().stream()
                .map(part -> part instanceof Measure measure ? of(measure) : BesideMetric.in(units, part.metric()))
                .collect(Collectors.joining());
    }
}
