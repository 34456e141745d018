package loftcoil.engine.loop;

/**
 * What a loop would do if something held its flow at a given value: one point each on the curve of drive and on the curve
 * of resistance. Where the two are equal, the flow needs no holding and is steady.
 *
 * @param flowKgPerS the flow held, kg/s, forward positive
 * @param drivePa net weight difference round the loop that pushes forward at that flow, Pa
 * @param frictionPa resistance of tubes, fittings and ports at that flow, Pa; not negative, whichever way it flows
 */
public record TrialFlow(double flowKgPerS, double drivePa, double frictionPa) {}
