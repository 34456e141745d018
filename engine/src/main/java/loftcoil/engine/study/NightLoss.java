package loftcoil.engine.study;

import loftcoil.engine.design.Design;

/** Heat a loop carries out of the tank with the fire out. */
final class NightLoss {

    private NightLoss() {}

    /** W; 0 where the water stands still. */
    static double watts(Design design, double tankC) {
        return design.circuitFireOut(tankC)
                .search()
                .fromRest()
                .map(flow -> -flow.heat().tankW())
                .orElse(0.0);
    }
}
