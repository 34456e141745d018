package loftcoil.engine.supply;

import loftcoil.engine.fault.Allowed;
import loftcoil.engine.pipe.Tube;
import loftcoil.engine.water.Water;

/**
 * What a tap or a valve lets through at a stated pressure before it, fully open: the form in which standards and papers rate
 * tapware. Pressure lost goes with the square of the flow, Δp = Δp₀ (Q/Q₀)², as for every fixed opening in turbulent flow (the
 * flow coefficient of IEC 60534-2-1, Kv = Q √(1 bar/Δp) for water); so the rating gives one loss coefficient, counted on
 * the speed in the pipe before it: K = Δp₀ / (½ ρ v₀²).
 *
 * <p>The rated pressure is taken as the static one just before the tap, what flow pressure means; the speed head in the test pipe,
 * 4 % of it for 7.5 L/min at 10 kPa in a bore of 13 mm, is left out. A flow regulator or an aerator with a diaphragm does not
 * follow the square: under little pressure it lets more through than this says.
 *
 * @param lPerMin flow in L/min, 1 to 200
 * @param kPa pressure lost at that flow in kPa, 1 to 1000
 */
public record RatedFlow(double lPerMin, double kPa) {

    /** The flows accepted, in L/min. */
    public static final Allowed FLOW = new Allowed(1, 200, "L/min");

    /** The pressures accepted, in kPa. */
    public static final Allowed PRESSURE = new Allowed(1, 1000, "kPa");

    /** Pressure at which the flow classes of taps for mains are given, kPa; DIN 4109-1, as restated in public. */
    public static final double CLASS_KPA = 300;

    /** Pressure at which taps for low pressure are rated, kPa; Regulation (EU) 2021/2139, appendix E: 0.1 bar. */
    public static final double LOW_KPA = 10;

    /**
     * What is taken of a thermostatic mixing valve of which nothing is said: one for a shower under low pressure passes 6 to
     * 7.5 L/min at 0.1 bar (a trade page's restatement of the British requirement), the upper end here.
     */
    public static final RatedFlow USUAL_MIXER = new RatedFlow(7.5, LOW_KPA);

    /** Taps are tested with cold water. */
    private static final double TESTED_AT_C = 15;

    private static final double L_PER_MIN = 60_000;

    /**
     * Checks the values.
     *
     * @throws loftcoil.engine.fault.RefusedException where a value is outside its range or not a number
     */
    public RatedFlow {
        FLOW.require("lPerMin", lPerMin);
        PRESSURE.require("kPa", kPa);
    }

    /**
     * The loss coefficient in velocity heads of the pipe before it; for a tap, beside the velocity head of the jet.
     *
     * @param pipe the tube before it
     */
    public double lossK(Tube pipe) {
        double speed = lPerMin / L_PER_MIN / pipe.areaM2();
        return 1000 * kPa / (Water.densityKgPerM3(TESTED_AT_C) * speed * speed / 2);
    }
}
