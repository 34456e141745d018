package loftcoil.engine.fire;

import java.util.List;
import java.util.OptionalDouble;
import loftcoil.engine.constant.Constants;
import loftcoil.engine.fault.Allowed;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.gas.FlueGas;
import loftcoil.engine.water.Water;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/**
 * A coil in a fire: how much heat reaches the water.
 *
 * <p>The released heat is split: a share is radiated by embers and flame, the rest is in the gas. The coil takes its part of the
 * radiation by the share of the firebox's surface it makes up, and cools the gas that sweeps over it ({@link GasSide}). The
 * heat taken warms water, film, metal and soot ({@link TubeInside}); both sides are solved for the heat at which they agree.
 * Neither part can exceed its source, so the coil never takes more than the fire releases.
 *
 * <p>No measured figure for such coils was found to check the result as a whole. {@link FireSpread} gives the spread.
 *
 * @param coil the coil
 * @param burn the fire
 * @param firebox the heater
 */
public record CoilInFire(FireCoil coil, Burn burn, Firebox firebox) {

    /** Flame colder than this goes out, °C; common practice, no source. */
    public static final double LEAST_FLAME_C = 300;

    /** Emissivity of a tube under soot: Incropera, 6th ed., table A.11 gives 0.95 for lampblack; the rest is ash. */
    private static final double SOOTY = 0.9;

    /** Temperature of embers, K: 900 °C, common practice, no source. It only matters where the coil is nearly as hot. */
    private static final double EMBER_K = 1173;

    /**
     * Checks that the fire can burn at all.
     *
     * @throws RefusedException where so much air, water or unburnt wood leaves the gas colder than {@value #LEAST_FLAME_C} °C
     */
    public CoilInFire {
        double flameC = burn.adiabaticC();
        if (flameC < LEAST_FLAME_C) {
            throw new RefusedException(List.of(new Fault(
                    "burn",
                    Math.round(flameC) + " °C in the flame",
                    "at least " + Math.round(LEAST_FLAME_C) + " °C",
                    "so much air, water or unburnt wood puts the fire out")));
        }
    }

    /** Heat radiated by embers and flame to coil and walls together, W. */
    public double radiatedPoolW() {
        return burn.releasedW() * firebox.radiatedShare();
    }

    /** Heat in the gas as it reaches the coil, W above room air. */
    public double gasPoolW() {
        return burn.releasedW() - radiatedPoolW();
    }

    /** Temperature of the gas as it reaches the coil, °C. */
    public double gasBeforeC() {
        return gasC(gasPoolW());
    }

    /**
     * The heat the coil takes at a flow and inlet temperature of the water.
     *
     * @param flowKgPerS mass flow in kg/s, 0.0001 to 2
     * @param inletC temperature of the water at the coil's inlet in °C, 0 to 110
     * @throws RefusedException where a value is outside its range or not a number
     */
    public CoilHeat at(double flowKgPerS, double inletC) {
        return at(new WaterFlow(flowKgPerS, inletC));
    }

    /**
     * The heat the coil takes.
     *
     * @param water the water that enters it
     */
    public CoilHeat at(WaterFlow water) {
        double beforeC = gasBeforeC();
        if (coil.lengthM() == 0 || beforeC <= water.inletC()) {
            return new CoilHeat(0, 0, 0, beforeC, water.inletC(), beforeC, beforeC, OptionalDouble.of(water.inletC()));
        }
        GasSide gas = new GasSide(this);
        TubeInside inside = new TubeInside(coil, water);
        UnivariateFunction imbalance = heatW -> {
            double surfaceC = Math.min(inside.surfaceC(heatW), beforeC);
            return gas.takenW(surfaceC) + emberW(surfaceC) - heatW;
        };
        double most = gasPoolW() + radiatedPoolW();
        double heatW =
                new BracketingNthOrderBrentSolver(1e-11, 1e-9 * most, 1e-9 * most, 5).solve(200, imbalance, 0, most);
        double surfaceC = Math.min(inside.surfaceC(heatW), beforeC);
        double radiatedW = emberW(surfaceC);
        double gasW = gas.takenW(surfaceC);
        double outC = inside.outC(gasW + radiatedW);
        return new CoilHeat(
                gasW + radiatedW,
                gasW,
                radiatedW,
                surfaceC,
                inside.innerWallC(heatW),
                beforeC,
                gasC(gasPoolW() - gasW),
                outC <= Water.TEMPERATURE.high() ? OptionalDouble.of(outC) : OptionalDouble.empty());
    }

    /**
     * Where the released heat goes with this coil and water.
     *
     * @param water the water that enters the coil
     */
    public FireBalance balance(WaterFlow water) {
        CoilHeat heat = at(water);
        return FireBalance.of(this, heat.gasW(), heat.radiatedW());
    }

    /**
     * Where the released heat goes when the coil's heat is known, as by measuring how fast the tank warms. It is split between
     * embers and gas as {@link #at} splits the heat that it finds for the same water, unless the gas cannot give its part. The
     * split matters to the flue: a coil takes only some 5 to 20 % of its heat from the embers, and what it takes from the gas
     * is missing in the flue.
     *
     * @param coilW heat the water takes up in W, 0 to 200 000
     * @param water the water that enters the coil
     * @return a balance, or that the fire does not release so much
     * @throws RefusedException where the heat is outside its range or not a number
     */
    public FireAccount accountOf(double coilW, WaterFlow water) {
        double asked = new Allowed(0, 200_000, "W").require("coilW", coilW);
        double released = burn.releasedW();
        if (asked > released) {
            return new OverdrawnFire(asked, released);
        }
        CoilHeat found = at(water);
        double share = found.heatW() > 0 ? found.radiatedW() / found.heatW() : firebox.radiatedShare();
        double radiated = Math.max(asked * share, asked - gasPoolW());
        return FireBalance.of(this, asked - radiated, radiated);
    }

    /** Temperature of flue gas that carries this heat above room air, °C. */
    double gasC(double heatW) {
        FlueGas gas = burn.flueGas();
        return gas.tempC(gas.enthalpyJPerKg(firebox.air().tempC()) + heatW / burn.flueKgPerS());
    }

    /** The coil's part of the radiation, W, less what it radiates back. */
    private double emberW(double surfaceC) {
        double seen = coil.surfaceM2() * coil.place().emberShare();
        double part = seen / (seen + firebox.size().wallM2());
        double ratio = (surfaceC + Constants.KELVIN_AT_ZERO_C) / EMBER_K;
        return radiatedPoolW() * part * SOOTY * Math.max(0, 1 - ratio * ratio * ratio * ratio);
    }
}
