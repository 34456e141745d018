package loftcoil.engine.run;

import java.util.List;
import loftcoil.engine.fault.Allowed;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.fault.RefusedException;

/**
 * How finely a run is marched.
 *
 * @param stepS length of a step in which a fire burns or a draw starts, s; 5 to 3600, a divisor of the hour
 * @param quietS length of every other step, s; a multiple of {@code stepS} and a divisor of the hour. Where nothing is lit or
 *     drawn the tank changes over hours
 * @param layers layers of the tank, 1 to 500
 * @param runInDays days marched before the account begins, 0 to 365: the last days of the year before, under the same
 *     climate and use, so that the year starts from a tank that has settled into its ways
 * @param blockDays most days, 1 to 7, that have their mean weather together and of which the last are not marched but taken as one that
 *     hardly changed the tank ({@link DayBlocks}); 1 where every day is marched
 * @param cutAtPorts whether layers end at the tank's ports ({@link loftcoil.engine.tank.LayerPlan}); else all hold as much
 */
public record Pace(int stepS, int quietS, int layers, int runInDays, int blockDays, boolean cutAtPorts) {

    /** Of a day: one-minute steps, twelve layers, a month of run-in. */
    public static final Pace USUAL = new Pace(60, 60, 12, 31, 1, false);

    /**
     * Of a year: thin layers matter more to it than short steps, so it has four to five times the layers of a day. A quiet step is
     * as long as one of the sky.
     */
    public static final Pace YEAR = new Pace(120, 600, 54, 31, 7, true);

    /** Of a search that marches many years to see which of them is worth marching well: some four times as fast. */
    public static final Pace ROUGH = new Pace(600, 600, 12, 31, 7, true);

    private static final int HOUR_S = 3600;

    /**
     * Checks the values.
     *
     * @throws RefusedException where a value is outside its range or the step does not divide the hour
     */
    public Pace {
        new Allowed(5, HOUR_S, "s").require("stepS", stepS);
        new Allowed(5, HOUR_S, "s").require("quietS", quietS);
        if (HOUR_S % stepS != 0) {
            throw new RefusedException(
                    List.of(new Fault("stepS", Integer.toString(stepS), "a divisor of 3600 s", "steps fill the hour")));
        }
        if (HOUR_S % quietS != 0 || quietS % stepS != 0) {
            throw new RefusedException(List.of(new Fault(
                    "quietS",
                    Integer.toString(quietS),
                    "a multiple of " + stepS + " s that divides 3600 s",
                    "quiet steps fill the hour, and steps fill them")));
        }
        new Allowed(1, 500, "layers").require("layers", layers);
        new Allowed(0, Calendar.DAYS, "days").require("runInDays", runInDays);
        new Allowed(1, 7, "days").require("blockDays", blockDays);
    }

    /** All steps alike, every day marched. */
    public Pace(int stepS, int layers, int runInDays) {
        this(stepS, stepS, layers, runInDays, 1, false);
    }

    /** The same with another step, s, all alike. */
    public Pace withStepS(int newStepS) {
        return new Pace(newStepS, newStepS, layers, runInDays, blockDays, cutAtPorts);
    }

    /** The same with another number of layers. */
    public Pace withLayers(int newLayers) {
        return new Pace(stepS, quietS, newLayers, runInDays, blockDays, cutAtPorts);
    }

    /** The same with every day marched. */
    public Pace everyDay() {
        return new Pace(stepS, quietS, layers, runInDays, 1, cutAtPorts);
    }

    int stepsPerDay() {
        return 24 * HOUR_S / stepS;
    }
}
