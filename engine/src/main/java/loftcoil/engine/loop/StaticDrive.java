package loftcoil.engine.loop;

/** The push on water that stands still with every leg at the temperature of its surroundings. */
final class StaticDrive {

    private StaticDrive() {}

    /**
     * Static drive, Pa, forward positive. A lit coil's temperature at rest is unbounded; it is counted at its
     * surroundings here. Surroundings outside 0 to 110 °C count as that end of the range.
     */
    static double pa(CircuitPlan plan, Setting setting) {
        double tankDensity = LiquidTable.densityKgPerM3(setting.tankC());
        double drive =
                March.GRAVITY * setting.columnExcessKgPerM3() * plan.heights().portsApartM();
        for (Pipe pipe : plan.forward()) {
            drive -= March.GRAVITY * (LiquidTable.densityKgPerM3(pipe.aroundC()) - tankDensity) * pipe.riseM();
        }
        return drive;
    }
}
