package loftcoil.engine.loop;

import loftcoil.engine.words.MeasuredText;

/**
 * No flow that the loop can drive carries the heat off: the water would boil first.
 *
 * @param at the place that reaches its boiling point (or 110 °C, where the water formulas end) first; its margin is
 *     zero up to rounding
 * @param leastFlowKgPerS flow below which it boils there, kg/s
 * @param drivePa drive the loop has at that flow, Pa
 * @param frictionPa resistance it has at that flow, Pa; more than the drive
 * @param finding the finding for a person
 */
public record Boils(BoilMargin at, double leastFlowKgPerS, double drivePa, double frictionPa, MeasuredText finding)
        implements Circulation {}
