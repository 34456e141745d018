package loftcoil.engine.study;

import loftcoil.engine.fault.Allowed;
import loftcoil.engine.pipe.Friction;

/**
 * What is not surely known of a loop.
 *
 * @param coilHeat heat the coil takes
 * @param roughness roughness of the tube
 * @param fittings losses of fittings, joints and ports
 * @param heatLoss heat lost by the legs: lagging as built, damp and gaps
 * @param friction friction of straight tube
 * @param transition Reynolds numbers at which flow turns turbulent; ends 0.71 to 1.41
 * @param weatherM swing of the air pressure, as metres of altitude, two chances in three within; 0 to 1000; 10 hPa is about 85 m
 */
public record LoopDoubts(
        Doubt coilHeat,
        Doubt roughness,
        Doubt fittings,
        Doubt heatLoss,
        Doubt friction,
        Doubt transition,
        double weatherM) {

    private static final Allowed WEATHER = new Allowed(0, 1000, "m");

    /** Two deviations of it stay within what {@link Friction#TRANSITION} accepts. */
    private static final Allowed TRANSITION_ENDS = new Allowed(0.71, 1.41, "");

    /**
     * The usual doubts: coil heat ±40 % (the fire's own estimate), roughness from half to tenfold (new tube to scale), fittings
     * ±25 % and more upwards for burrs (two-K method and soldering), lagging −10 % to +30 %, friction −10 % to +15 % (ten per cent
     * of scatter, and the measured smooth pipe of McKeon and others 2004 lies up to 18 % above {@link Friction} from Re 1400 to 2600),
     * transition 15 % sooner to 10 % later, weather ±10 hPa. All but the first and the friction are common practice, no source.
     */
    public static final LoopDoubts USUAL = new LoopDoubts(
            new Doubt(0.6, 1.4),
            new Doubt(0.5, 10),
            new Doubt(0.75, 1.4),
            new Doubt(0.9, 1.3),
            new Doubt(0.9, 1.15),
            new Doubt(0.85, 1.1),
            85);

    /**
     * Checks the transition and the weather.
     *
     * @throws loftcoil.engine.fault.RefusedException where one is outside its range or not a number
     */
    public LoopDoubts {
        TRANSITION_ENDS.require("transition.lowTimes", transition.lowTimes());
        TRANSITION_ENDS.require("transition.highTimes", transition.highTimes());
        WEATHER.require("weatherM", weatherM);
    }

    /** The same with another doubt about the heat. */
    public LoopDoubts withCoilHeat(Doubt other) {
        return new LoopDoubts(other, roughness, fittings, heatLoss, friction, transition, weatherM);
    }
}
