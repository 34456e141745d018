package loftcoil.runner.handout;

import loftcoil.engine.words.Measure;
import loftcoil.engine.words.MeasureKind;

/** A measure in metric units, with digits that a builder can use. */
final class MetricMeasure {

    private static final double HANDBREADTH_M = 0.1;

    private MetricMeasure() {}

    /** The number alone. */
    static String number(Measure measure) {
        return measure.kind() == MeasureKind.LENGTH_M && Math.abs(measure.value()) >= HANDBREADTH_M
                ? Measure.rounded(measure.value(), MeasureKind.LENGTH_M, MeasureKind.LENGTH_M.decimals())
                        .number()
                : measure.number();
    }

    /** Unit that the number is in; empty where there is none. */
    static String unit(MeasureKind kind) {
        return kind.unit();
    }
}
