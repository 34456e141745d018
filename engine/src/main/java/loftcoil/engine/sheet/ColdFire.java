package loftcoil.engine.sheet;

import loftcoil.engine.loop.FlowSearch;

/**
 * The night: fire out, tank warm, coil and legs at their surroundings.
 *
 * @param flowKgPerS flow the loop settles into from rest, kg/s; negative where it runs backward; 0 where it stands
 * @param lossW heat that flow takes from the tank, W; 0 where it stands
 */
public record ColdFire(double flowKgPerS, double lossW) {

    /** Whether the water stands still. */
    public boolean stands() {
        return Math.abs(flowKgPerS) < FlowSearch.LEAST_KG_PER_S;
    }
}
