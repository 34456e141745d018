package loftcoil.engine.study;

import org.hipparchus.stat.descriptive.rank.Percentile;
import org.hipparchus.stat.descriptive.rank.Percentile.EstimationType;

/**
 * Where the values of a spread lie. NaN throughout where there is none.
 *
 * @param p5 one in twenty is below
 * @param p25 a quarter is below
 * @param p50 half is below
 * @param p75 three quarters are below
 * @param p95 one in twenty is above
 */
public record Percentiles(double p5, double p25, double p50, double p75, double p95) {

    static Percentiles of(double[] values) {
        if (values.length == 0) {
            return new Percentiles(Double.NaN, Double.NaN, Double.NaN, Double.NaN, Double.NaN);
        }
        Percentile percentile = new Percentile().withEstimationType(EstimationType.R_7);
        percentile.setData(values);
        return new Percentiles(
                percentile.evaluate(5),
                percentile.evaluate(25),
                percentile.evaluate(50),
                percentile.evaluate(75),
                percentile.evaluate(95));
    }
}
