package loftcoil.engine.run;

import loftcoil.engine.tank.CoatedTank;
import loftcoil.engine.tank.Standing;
import loftcoil.engine.tank.TankLoss;

/** The tank's standing loss every few kelvin, worked out once: the nearest is good to 1 % even for a bare tank. */
final class StandingLosses {

    private static final double STEP_K = 2;
    private static final int COUNT = 56;

    private final TankLoss[] losses = new TankLoss[COUNT];

    StandingLosses(CoatedTank tank, double aroundC) {
        for (int i = 0; i < COUNT; i++) {
            losses[i] = tank.lossAt(new Standing(i * STEP_K, aroundC));
        }
    }

    TankLoss at(double meanC) {
        return losses[(int) Math.max(0, Math.min(COUNT - 1, Math.rint(meanC / STEP_K)))];
    }
}
