package loftcoil.engine.design;

/**
 * One draw of mixed water, every day.
 *
 * @param atH time of day, h; 0 to 24
 * @param litres litres of mixed water, L; 0 to 2000
 * @param mixedC temperature of the mixed water, °C; 5 to 90
 * @param tap name of the tap it is drawn from
 */
public record Use(double atH, double litres, double mixedC, String tap) {}
