package loftcoil.engine.use;

/**
 * One draw-off of a tapping cycle.
 *
 * @param atH hour of the day it starts
 * @param kWh useful heat to be drawn
 * @param flowLPerMin least flow for heat to count as useful
 * @param usefulC temperature from which heat counts as useful, °C
 * @param peakC least temperature to be reached, °C; the same as usefulC where the regulation gives none
 */
public record Tapping(double atH, double kWh, double flowLPerMin, double usefulC, double peakC) {}
