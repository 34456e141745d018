package loftcoil.engine.loop;

import loftcoil.engine.constant.Constants;

/** The push on water that stands still with every leg at the temperature of its surroundings. */
final class StaticDrive {

    private StaticDrive() {}

    /**
     * Static drive, Pa, forward positive. A lit coil's temperature at rest is unbounded; it is counted at its
     * surroundings here. Surroundings outside 0 to 110 °C count as that end of the range.
     */
    static double pa(CircuitPlan plan, Setting setting) {
        double tankDensity = LiquidTable.WATER.densityKgPerM3(setting.tankC());
        double drive = Constants.GRAVITY_M_PER_S2
                * (setting.columnKgPerM3() - tankDensity)
                * plan.heights().portsApartM();
        for (Pipe pipe : plan.forward()) {
            drive -= Constants.GRAVITY_M_PER_S2
                    * (LiquidTable.WATER.densityKgPerM3(pipe.aroundC()) - tankDensity)
                    * pipe.riseM();
        }
        return drive;
    }
}
