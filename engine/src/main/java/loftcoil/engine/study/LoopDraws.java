package loftcoil.engine.study;

import java.util.List;
import java.util.SplittableRandom;

/** All random numbers of a spread, drawn before the work is shared out: threads cannot change them. */
final class LoopDraws {

    static final List<String> NAMES =
            List.of("coil heat", "roughness", "fittings", "heat loss", "weather", "friction", "transition");

    private static final int FIRST = 5;

    private final double[][] shares;

    LoopDraws(SpreadPlan plan) {
        SplittableRandom random = new SplittableRandom(plan.seed());
        shares = new double[plan.samples()][NAMES.size()];
        for (double[] draw : shares) {
            for (int i = 0; i < FIRST; i++) {
                draw[i] = random.nextDouble();
            }
        }
        // Drawn after all the others, so that a doubt added later does not change what the earlier ones were drawn as.
        for (double[] draw : shares) {
            for (int i = FIRST; i < draw.length; i++) {
                draw[i] = random.nextDouble();
            }
        }
    }

    /** Share of all draws of a doubt that lies below this sample's, 0 to 1. */
    double share(int sample, int doubt) {
        return shares[sample][doubt];
    }
}
