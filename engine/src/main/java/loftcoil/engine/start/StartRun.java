package loftcoil.engine.start;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import loftcoil.engine.design.CoilHeating;
import loftcoil.engine.loop.WarmingLoop;
import loftcoil.engine.tank.WaterHeat;
import loftcoil.engine.water.Water;

/** One start, marched until it has settled, or for three hours. */
final class StartRun {

    private static final double MINUTE_S = 60;
    private static final int MOMENTS_A_MIN = 6;
    private static final double LONGEST_MIN = 180;
    private static final double FIRE_RISES_MIN = 5;
    /** Time over which flow and coil must have stayed as they are. */
    private static final int CALM_MIN = 10;
    /** Time over which one that never settled is looked at. */
    private static final int LATE_MIN = 30;

    private static final double CALM_SHARE = 0.02;
    private static final double CALM_K = 1;
    private static final double SWING_SHARE = 0.2;
    /** Boiling after which no more is to be learnt, min. */
    private static final double ENOUGH_BOILING_MIN = 10;

    private static final double LEAST_FLOW = 1e-4;
    /** Flow that stands for the steady one where there is none, kg/s: of the loops of the course. */
    private static final double USUAL_FLOW = 0.02;

    private final WarmingLoop loop;
    private final Tank tank;
    private final CoilHeating heating;
    private final double steady;
    private final double longestS;
    private final List<StartMoment> moments = new ArrayList<>();

    private double minute;
    private double boilingMin;
    private double firstBoilingMin = Double.NaN;
    private double hottestC;
    private boolean boiling;

    /**
     * @param loop the loop as it rests, its fire just lit
     * @param heating heat of the fire that burns as it should
     * @param steadyKgPerS the steady forward flow, kg/s; 0 where there is none
     * @param longestS longest step, s
     */
    StartRun(WarmingLoop loop, Tank tank, CoilHeating heating, double steadyKgPerS, double longestS) {
        this.loop = loop;
        this.tank = tank;
        this.heating = heating;
        this.steady = steadyKgPerS;
        this.longestS = longestS;
    }

    /**
     * The tank, as it is however long the fire burns.
     *
     * @param tankC its hottest water, °C
     * @param densityKgPerM3 mean density of the water between its two ports, kg/m³
     * @param coldPortJPerKg heat above 0 °C of its water at the port of the cold legs, J/kg
     * @param returnPortJPerKg the same at the port of the hot legs, J/kg
     */
    record Tank(double tankC, double densityKgPerM3, double coldPortJPerKg, double returnPortJPerKg) {

        /** All of it at one temperature. */
        static Tank uniform(double tankC) {
            return layered(tankC, tankC);
        }

        /** Warmer from the cold port up to the return port, evenly. */
        static Tank layered(double coldPortC, double returnPortC) {
            return new Tank(
                    returnPortC,
                    // Simpson's rule: water's density bends a little.
                    (Water.densityKgPerM3(coldPortC)
                                    + 4 * Water.densityKgPerM3((coldPortC + returnPortC) / 2)
                                    + Water.densityKgPerM3(returnPortC))
                            / 6,
                    WaterHeat.jPerKg(coldPortC),
                    WaterHeat.jPerKg(returnPortC));
        }
    }

    Start run(OptionalDouble gapH, Counterflow counterflow) {
        moments.add(moment());
        while (minute < LONGEST_MIN && boilingMin < ENOUGH_BOILING_MIN && !settled()) {
            for (int i = 0; i < MOMENTS_A_MIN; i++) {
                march(MINUTE_S / MOMENTS_A_MIN);
                moments.add(moment());
            }
        }
        StartEnd end = end();
        double flow = meanFlow(CALM_MIN);
        return new Start(
                gapH,
                tank.tankC(),
                counterflow,
                end,
                end == StartEnd.FORWARD ? forwardAfter() : OptionalDouble.empty(),
                Double.isNaN(firstBoilingMin) ? OptionalDouble.empty() : OptionalDouble.of(firstBoilingMin),
                boilingMin,
                hottestC,
                steady > 0,
                steady > 0 ? flow / steady : 0);
    }

    List<StartMoment> moments() {
        return moments;
    }

    private void march(double seconds) {
        double left = seconds;
        while (left > 1e-9) {
            double step = Math.min(Math.min(left, longestS), loop.longestStepS());
            double flow = loop.push(step, tank.densityKgPerM3());
            double inletC = Math.min(110, Math.max(0, flow >= 0 ? loop.coilInC() : loop.coilOutC()));
            double heatW = heating.heatW(Math.max(LEAST_FLOW, Math.abs(flow)), inletC);
            loop.carry(
                    step, heatW * Math.min(1, minute / FIRE_RISES_MIN), tank.coldPortJPerKg(), tank.returnPortJPerKg());
            minute += step / MINUTE_S;
            left -= step;
            watch(step / MINUTE_S);
        }
    }

    private void watch(double minutes) {
        hottestC = Math.max(hottestC, loop.hottestC());
        boiling = loop.boiling();
        if (boiling) {
            boilingMin += minutes;
            firstBoilingMin = Double.isNaN(firstBoilingMin) ? minute : firstBoilingMin;
        }
    }

    private StartMoment moment() {
        return new StartMoment(minute, loop.flowKgPerS(), loop.coilInC(), loop.coilOutC());
    }

    private double scale() {
        return steady > 0 ? steady : USUAL_FLOW;
    }

    private boolean settled() {
        return minute >= FIRE_RISES_MIN + CALM_MIN + 1
                && range(CALM_MIN, StartMoment::flowKgPerS)
                        < CALM_SHARE * Math.max(Math.abs(meanFlow(CALM_MIN)), Start.STILL_SHARE * scale())
                && range(CALM_MIN, StartMoment::hotterEndC) < CALM_K;
    }

    private StartEnd end() {
        if (boiling || boilingMin >= ENOUGH_BOILING_MIN) {
            return StartEnd.BOILS;
        }
        if (minute >= LONGEST_MIN && range(LATE_MIN, StartMoment::flowKgPerS) > SWING_SHARE * scale()) {
            return StartEnd.SWINGS;
        }
        double flow = meanFlow(CALM_MIN);
        if (Math.abs(flow) < Start.STILL_SHARE / 5 * scale()) {
            return StartEnd.STILL;
        }
        return flow > 0 ? StartEnd.FORWARD : StartEnd.BACKWARD;
    }

    private OptionalDouble forwardAfter() {
        int at = moments.size() - 1;
        while (at > 0 && moments.get(at).flowKgPerS() > Start.STILL_SHARE * scale()) {
            at--;
        }
        return at + 1 < moments.size() ? OptionalDouble.of(moments.get(at + 1).minute()) : OptionalDouble.empty();
    }

    private List<StartMoment> late(int minutes) {
        return moments.subList(Math.max(0, moments.size() - 1 - minutes * MOMENTS_A_MIN), moments.size());
    }

    private double range(int minutes, ToDoubleFunction<StartMoment> of) {
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (StartMoment each : late(minutes)) {
            double now = of.applyAsDouble(each);
            least = Math.min(least, now);
            most = Math.max(most, now);
        }
        return most - least;
    }

    private double meanFlow(int minutes) {
        return late(minutes).stream()
                .mapToDouble(StartMoment::flowKgPerS)
                .average()
                .orElse(0);
    }
}
