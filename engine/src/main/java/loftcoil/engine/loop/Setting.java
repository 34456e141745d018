package loftcoil.engine.loop;

/**
 * The conditions one search is made for.
 *
 * @param tankC temperature of the whole tank, °C; from 0 to its boiling point
 * @param altitudeM altitude of the site, m above the sea
 * @param firing what the coil does
 */
public record Setting(double tankC, double altitudeM, Firing firing) {}
