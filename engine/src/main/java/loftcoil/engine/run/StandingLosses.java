package loftcoil.engine.run;

import loftcoil.engine.tank.Standing;
import loftcoil.engine.tank.TankLagging;
import loftcoil.engine.tank.TankLoss;
import loftcoil.engine.tank.TankShape;

/** The tank's standing loss every few kelvin, worked out once: the nearest is good to 1 % even for a bare tank. */
final class StandingLosses {

    private static final double STEP_K = 2;
    private static final int COUNT = 56;

    private final TankLoss[] losses = new TankLoss[COUNT];

    StandingLosses(TankShape shape, TankLagging lagging, double aroundC, double paneM2) {
        for (int i = 0; i < COUNT; i++) {
            TankLoss all = TankLoss.of(shape, lagging, new Standing(i * STEP_K, aroundC));
            losses[i] = paneM2 > 0 ? all.behindPanes(shape, paneM2) : all;
        }
    }

    TankLoss at(double meanC) {
        return losses[(int) Math.max(0, Math.min(COUNT - 1, Math.rint(meanC / STEP_K)))];
    }
}
