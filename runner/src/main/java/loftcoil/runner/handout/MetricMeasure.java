package loftcoil.runner.handout;

import java.util.Locale;
import loftcoil.engine.words.Measure;
import loftcoil.engine.words.MeasureKind;

/** A measure in metric units, with digits that a builder can use. */
final class MetricMeasure {

    private static final double HANDBREADTH_M = 0.1;
    private static final double HUNDRED = 100;

    private MetricMeasure() {}

    /** The number alone. */
    static String number(Measure measure) {
        double size = Math.abs(measure.value());
        return switch (measure.kind()) {
            case LENGTH_M -> size >= HANDBREADTH_M ? decimals(measure.value(), 2) : asTheEngineDoes(measure);
            case MASS_KG, VOLUME_L, ENERGY_KWH ->
                size >= HUNDRED ? decimals(measure.value(), 0) : asTheEngineDoes(measure);
            default -> asTheEngineDoes(measure);
        };
    }

    /** Unit that the number is in; empty where there is none. */
    static String unit(MeasureKind kind) {
        return kind.unit();
    }

    private static String asTheEngineDoes(Measure measure) {
        String all = measure.metric();
        String unit = measure.kind().unit();
        return unit.isEmpty() || !all.endsWith(unit)
                ? all
                : all.substring(0, all.length() - unit.length()).strip();
    }

    private static String decimals(double value, int places) {
        return String.format(Locale.ROOT, "%." + places + "f", value).replace('-', '−');
    }
}
