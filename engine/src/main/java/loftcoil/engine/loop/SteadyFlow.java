package loftcoil.engine.loop;

import java.util.List;

/**
 * One flow at which drive and resistance balance.
 *
 * @param flowKgPerS mass flow, kg/s; forward (tank, cold legs, coil, hot legs, tank) is positive
 * @param flowLPerMin the same as volume at the tank's temperature, L/min
 * @param stable true where a small push dies away, false where it grows; judged on the momentum balance alone (the
 *     slope of drive minus resistance), not on slow swings of temperature
 * @param drivePa net weight difference round the loop that pushes forward, Pa; negative in a backward flow
 * @param frictionPa resistance of tubes, fittings and ports, Pa; not negative
 * @param reynolds Reynolds number in the coil at the coil's mean viscosity
 * @param coil temperatures at the coil's inlet end (start) and outlet end (end)
 * @param legs temperatures at the ends of cold legs, coil and hot legs in the forward order
 * @param boilMargin the place nearest to boiling
 * @param heat heat into the coil, lost, and into the tank
 */
public record SteadyFlow(
        double flowKgPerS,
        double flowLPerMin,
        boolean stable,
        double drivePa,
        double frictionPa,
        double reynolds,
        LegEnds coil,
        List<LegEnds> legs,
        BoilMargin boilMargin,
        HeatBook heat) {

    /** Keeps a copy of the legs. */
    public SteadyFlow {
        legs = List.copyOf(legs);
    }

    /** Water temperature at the tank's return port, °C. */
    public double returnC() {
        return legs.get(legs.size() - 1).endC();
    }

    /** Water temperature at the tank's cold port, °C. */
    public double coldPortC() {
        return legs.get(0).startC();
    }

    /** Temperature rise from the coil's inlet to its outlet, K; negative in a backward flow. */
    public double coilRiseK() {
        return coil.endC() - coil.startC();
    }
}
