package loftcoil.engine.loop;

/**
 * The conditions one search is made for.
 *
 * @param tankC temperature of the water that enters the loop, °C; from 0 to its boiling point
 * @param altitudeM altitude of the site, m above the sea
 * @param firing what the coil does
 * @param columnKgPerM3 mean density of the tank's water between its two ports, kg/m³; 900 to 1050: that column is part of
 *     the circuit, and lighter than the water at the lower port where the tank is in layers
 */
public record Setting(double tankC, double altitudeM, Firing firing, double columnKgPerM3) {

    /** The whole tank at one temperature. */
    public Setting(double tankC, double altitudeM, Firing firing) {
        this(tankC, altitudeM, firing, LiquidTable.WATER.densityKgPerM3(tankC));
    }
}
