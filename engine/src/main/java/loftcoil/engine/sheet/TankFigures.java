package loftcoil.engine.sheet;

import loftcoil.engine.design.Design;
import loftcoil.engine.design.Tank;
import loftcoil.engine.tank.Standing;
import loftcoil.engine.water.Water;

/**
 * Weight and swelling of the tank.
 *
 * @param fullMassKg empty mass plus its volume of water at 10 °C, kg
 * @param expansionL growth of the full volume from 10 to 90 °C, L; the tank itself is taken as rigid
 * @param waterlineL what it holds full to the waterline, L
 * @param lossAt60W what coat and ports lose, the whole tank at 60 °C; the panes' loss is not in it, W
 */
public record TankFigures(double fullMassKg, double expansionL, double waterlineL, double lossAt60W) {

    /** Tank temperature its loss is told at, °C: as stores are tested. */
    static final double LOSS_AT_C = 60;

    private static final double COLD_C = 10;
    private static final double HOT_C = 90;
    private static final double M3_PER_L = 0.001;

    static TankFigures of(Design design) {
        Tank tank = design.tank();
        double coldDensity = Water.densityKgPerM3(COLD_C);
        double mass = tank.emptyMassKg() + tank.volumeL() * M3_PER_L * coldDensity;
        Standing hot = new Standing(LOSS_AT_C, tank.aroundC());
        double lossW = design.coatedTank().lossAt(hot).watts(hot);
        double growthL = tank.volumeL() * (coldDensity / Water.densityKgPerM3(HOT_C) - 1);
        return new TankFigures(mass, growthL, tank.waterlineL(), lossW);
    }
}
