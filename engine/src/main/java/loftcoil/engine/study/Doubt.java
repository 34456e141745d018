package loftcoil.engine.study;

import java.util.ArrayList;
import java.util.List;
import loftcoil.engine.fault.Allowed;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.fault.RefusedException;
import org.hipparchus.distribution.continuous.NormalDistribution;

/**
 * How unsure a factor is: about two chances in three that it lies between low and high. Drawn from a log-normal whose two sides have
 * their own width, cut at two standard deviations, so that it is never negative and its median is 1.
 *
 * @param lowTimes lower end; 0.05 to 1
 * @param highTimes upper end; 1 to 20
 */
public record Doubt(double lowTimes, double highTimes) {

    private static final Allowed LOW = new Allowed(0.05, 1, "");
    private static final Allowed HIGH = new Allowed(1, 20, "");
    private static final NormalDistribution NORMAL = new NormalDistribution();
    private static final double CUT = 2;
    private static final double BELOW_CUT = NORMAL.cumulativeProbability(-CUT);

    /**
     * Checks the ends.
     *
     * @throws RefusedException where an end is outside its range or not a number; all faults at once
     */
    public Doubt {
        List<Fault> faults = new ArrayList<>();
        LOW.faultIn("lowTimes", lowTimes).ifPresent(faults::add);
        HIGH.faultIn("highTimes", highTimes).ifPresent(faults::add);
        if (!faults.isEmpty()) {
            throw new RefusedException(faults);
        }
    }

    /** No doubt at all. */
    public static Doubt none() {
        return new Doubt(1, 1);
    }

    /**
     * The factor below which this share of all draws lies.
     *
     * @param share 0 to 1
     */
    double at(double share) {
        double deviations = deviations(share);
        return Math.pow(deviations < 0 ? lowTimes : highTimes, Math.abs(deviations));
    }

    /** Standard deviations from the middle below which this share of all draws lies, −2 to 2. */
    static double deviations(double share) {
        return NORMAL.inverseCumulativeProbability(BELOW_CUT + share * (1 - 2 * BELOW_CUT));
    }
}
