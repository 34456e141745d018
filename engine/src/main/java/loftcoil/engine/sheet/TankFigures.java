package loftcoil.engine.sheet;

import loftcoil.engine.design.Tank;
import loftcoil.engine.water.Water;

/**
 * Weight and swelling of the tank.
 *
 * @param fullMassKg empty mass plus its volume of water at 10 °C, kg
 * @param expansionL growth of the full volume from 10 to 90 °C, L; the tank itself is taken as rigid
 */
public record TankFigures(double fullMassKg, double expansionL) {

    private static final double COLD_C = 10;
    private static final double HOT_C = 90;
    private static final double M3_PER_L = 0.001;

    static TankFigures of(Tank tank) {
        double coldDensity = Water.densityKgPerM3(COLD_C);
        double mass = tank.emptyMassKg() + tank.volumeL() * M3_PER_L * coldDensity;
        return new TankFigures(mass, tank.volumeL() * (coldDensity / Water.densityKgPerM3(HOT_C) - 1));
    }
}
