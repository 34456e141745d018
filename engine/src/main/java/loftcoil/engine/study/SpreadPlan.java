package loftcoil.engine.study;

import java.util.ArrayList;
import java.util.List;
import loftcoil.engine.fault.Allowed;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.fault.RefusedException;

/**
 * How a spread is reckoned.
 *
 * @param samples number of loops drawn, 1 to 1 000 000
 * @param seed where the draws start; the same seed gives the same result on any number of threads
 * @param threads threads to work on, 1 to 64
 */
public record SpreadPlan(int samples, long seed, int threads) {

    private static final Allowed SAMPLES = new Allowed(1, 1_000_000, "loops");
    private static final Allowed THREADS = new Allowed(1, 64, "threads");

    /**
     * Checks the numbers.
     *
     * @throws RefusedException where a number is outside its range; all faults at once
     */
    public SpreadPlan {
        List<Fault> faults = new ArrayList<>();
        SAMPLES.faultIn("samples", samples).ifPresent(faults::add);
        THREADS.faultIn("threads", threads).ifPresent(faults::add);
        if (!faults.isEmpty()) {
            throw new RefusedException(faults);
        }
    }
}
