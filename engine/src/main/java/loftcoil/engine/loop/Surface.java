package loftcoil.engine.loop;

import loftcoil.engine.constant.Constants;
import loftcoil.engine.water.Saturation;

/**
 * The free surface of the tank, from which pressures in the loop are counted: air pressure plus the weight of the column
 * from the waterline down, of water as warm as the tank.
 */
record Surface(double pressurePa, double levelM, double densityKgPerM3) {

    /** Below this pressure (that of the triple point) water cannot stand as a liquid at all. */
    private static final double LEAST_PA = 611.657;

    /** Boiling temperature at a level, °C; 0.01 where the column above hangs on less than its vapour pressure. */
    double boilingC(double atLevelM) {
        double pressure = pressurePa + densityKgPerM3 * Constants.GRAVITY_M_PER_S2 * (levelM - atLevelM);
        return Saturation.tempC(Math.max(pressure, LEAST_PA));
    }
}
