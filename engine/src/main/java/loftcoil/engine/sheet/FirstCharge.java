package loftcoil.engine.sheet;

import loftcoil.engine.design.CoilHeating;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.Fire;
import loftcoil.engine.fire.WoodTable;
import loftcoil.engine.gas.Atmosphere;
import loftcoil.engine.pipe.TubeTable;
import loftcoil.engine.water.Saturation;
import loftcoil.engine.water.Water;

/**
 * The weighed charge of a first fire: so little wood that its share in the coil cannot boil the coil's water away even where nothing
 * flows,
 *
 * <pre>charge = m (c (T_boil − T_cold) + r) / (H · s)</pre>
 *
 * with m the water in the coil, c its specific heat, r the heat of evaporation, H the net heating value of the wood and s the share of
 * it that comes into the coil. An energy balance; each value is taken at the end that makes the charge small: m at the density of
 * boiling water, T_boil that of the open air of the place, r that of 100 °C (it grows as the boiling point falls), H that of the
 * richest wood of the table, bone-dry and burnt to the end, s at its high end and at least {@link #LEAST_SHARE}. What the copper, the
 * legs and the room take is left out. Not seen by it: steam that throws water out of the coil before it is evaporated.
 *
 * @param coilWaterKg water in the coil, kg
 * @param toSteamJPerKg heat that brings a kilogram of it from cold to boiling and evaporates it, J/kg
 * @param woodJPerKg net heating value that is reckoned with, J for each kg
 * @param share share of that in the coil, {@link #LEAST_SHARE} to 1
 */
public record FirstCharge(double coilWaterKg, double toSteamJPerKg, double woodJPerKg, double share) {

    /**
     * Least share that is reckoned with. A coil in a common heater takes a fifth to two fifths of what the wood holds; half is the most
     * that a design is believed without doubt (the caution about the coil's share). Common practice, no source.
     */
    public static final double LEAST_SHARE = 0.5;

    /** A stated heat may be more by four tenths, as one worked out from the fire may; common practice, no source. */
    private static final double STATED_TIMES = 1.4;

    /** Heat of evaporation at 100 °C, J/kg: 2256.5 kJ/kg by IAPWS-IF97. */
    private static final double EVAPORATION_J_PER_KG = 2.2565e6;

    /** A kitchen scale shows no less, g. */
    private static final double SCALE_G = 5;

    private static final double W_PER_KW = 1000;
    private static final double G_PER_KG = 1000;

    /** The charge of a design, its system cold. */
    public static FirstCharge of(Design design) {
        double boilingC = Saturation.tempC(Atmosphere.pressurePa(design.site().altitudeM()));
        double coldC = design.site().coldSupplyC();
        double m3 = TubeTable.require("coil.tube", design.coil().tube()).volumeM3PerM()
                * design.coil().lengthM();
        double warmsJPerKg = Water.specificHeatJPerKgK((coldC + boilingC) / 2) * (boilingC - coldC);
        return new FirstCharge(
                m3 * Water.densityKgPerM3(boilingC),
                warmsJPerKg + EVAPORATION_J_PER_KG,
                richestJPerKg(),
                design.fire().map(fire -> share(design, fire)).orElse(LEAST_SHARE));
    }

    /** The charge, g. */
    public double chargeG() {
        return G_PER_KG * coilWaterKg * toSteamJPerKg / (woodJPerKg * share);
    }

    /** The charge as it is weighed: rounded down to what a kitchen scale shows, g. */
    public double weighedG() {
        return Math.floor(chargeG() / SCALE_G) * SCALE_G;
    }

    private static double share(Design design, Fire fire) {
        double times = design.coil().heatKW().isPresent() ? STATED_TIMES : 1;
        double highW = times
                * design.coilHeatW(
                                CoilHeating.USUAL_FLOW_KG_PER_S, design.site().coldSupplyC())
                        .high();
        return Math.min(1, Math.max(LEAST_SHARE, highW / (W_PER_KW * fire.fuelKW())));
    }

    private static double richestJPerKg() {
        return WoodTable.known().names().stream()
                .mapToDouble(name -> WoodTable.require("wood", name).netJPerKg(0))
                .max()
                .orElseThrow();
    }
}
