package loftcoil.engine.fire;

import loftcoil.engine.water.Water;

/**
 * How warm the metal of a coil is where it touches the water, in the mean and on its hottest side.
 *
 * <p>A tube in a fire is not heated evenly. Round the tube the side that looks into the fire takes {@value #ROUND} times the mean
 * (one row of tubes heated from one side before a wall, some two diameters apart: figure in API Standard 530 / ISO 13704, from
 * memory), and along it the turns in the thick of the flame take {@value #ALONG} times the mean (common practice, no source).
 * The wall carries part of the heat round to the back. The unevenness round the tube is taken as {@code 1 + a cos φ}, for which
 * conduction in a thin wall leaves {@code a / (1 + k t / (h r²))} at the water: exact for a film {@code h} that is the same all
 * round. Along the tube nothing evens out, for turns are far apart.
 *
 * @param meanC mean temperature of the metal at the water, °C
 * @param coldestC the same where the water enters, °C: colder gas beside it than its dew point lets water and acid settle there
 * @param hottestC the same on the hottest side of the hottest turn, where water is as warm as it leaves the coil, °C
 * @param hottestWPerM2 heat that passes into the water there, W/m² of bore
 */
public record CoilWall(double meanC, double coldestC, double hottestC, double hottestWPerM2) {

    /** Most heat round the tube over its mean. */
    public static final double ROUND = 1.9;

    /** Most heat along the tube over its mean. */
    public static final double ALONG = 1.5;

    /**
     * The wall of a coil.
     *
     * @param coil the coil
     * @param water the water that enters it
     * @param heatW heat it takes up in all, W; 0 or more
     */
    public static CoilWall of(FireCoil coil, WaterFlow water, double heatW) {
        TubeInside inside = new TubeInside(coil, water);
        double meanC = inside.innerWallC(heatW);
        double meanFlux = heatW / (Math.PI * coil.tube().boreM() * coil.lengthM());
        double boiling = Water.TEMPERATURE.high();
        double outC = Math.min(inside.outC(heatW), boiling);
        double meanRise = meanC - Math.min((water.inletC() + inside.outC(heatW)) / 2, boiling);
        if (!(meanRise > 0)) {
            return new CoilWall(meanC, water.inletC(), outC, 0);
        }
        double film = meanFlux / meanRise;
        double radius = coil.tube().boreM() / 2;
        double evened = coil.tube().metal().conductivityWPerMK() * coil.tube().wallM() / (film * radius * radius);
        double peak = ALONG * (1 + (ROUND - 1) / (1 + evened));
        return new CoilWall(meanC, water.inletC() + meanRise, outC + peak * meanRise, peak * meanFlux);
    }
}
