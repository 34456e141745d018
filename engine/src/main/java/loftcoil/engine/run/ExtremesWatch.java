package loftcoil.engine.run;

import loftcoil.engine.tank.Layers;

/**
 * Notes the extremes of a march as it goes; allocates nothing.
 *
 * <p>Heating through is counted for the coldest layer while it is at {@value #KILLS_FROM_C} °C or more: a minute counts ten times
 * as much each {@value #TENFOLD_K} K higher. Legionella die to a tenth in 80 to 124 minutes at 50 °C and in 2 at 60 °C (World
 * Health Organization, Legionella and the prevention of legionellosis, 2007, from memory), which is tenfold in about 6 K.
 */
final class ExtremesWatch {

    private static final double GROWS_FROM_C = 25;
    private static final double GROWS_TO_C = 45;
    private static final double KILLS_FROM_C = 50;
    private static final double THOROUGH_C = 60;
    private static final double THOROUGH_S = 1800;
    private static final double TENFOLD_K = 6;
    private static final double DAY_S = 86_400;

    private double coldestC;
    private double hottestDrawC;
    private double leastAirC;
    private double longestWarmS;
    private double warmS;
    private double killedS;

    ExtremesWatch() {
        begin();
    }

    /** Forgets what was seen; water that stands warm goes on doing so. */
    void begin() {
        coldestC = Double.POSITIVE_INFINITY;
        hottestDrawC = Double.NEGATIVE_INFINITY;
        leastAirC = Double.POSITIVE_INFINITY;
        longestWarmS = 0;
    }

    void see(Layers tank, double seconds) {
        double baseC = tank.tempC(0);
        coldestC = Math.min(coldestC, baseC);
        hottestDrawC = Math.max(hottestDrawC, tank.drawC());
        if (baseC >= KILLS_FROM_C) {
            killedS += seconds * Math.pow(10, (baseC - THOROUGH_C) / TENFOLD_K);
        } else {
            killedS = 0;
        }
        if (killedS >= THOROUGH_S) {
            warmS = 0;
        } else if (tank.topC() >= GROWS_FROM_C && baseC <= GROWS_TO_C) {
            warmS += seconds;
            longestWarmS = Math.max(longestWarmS, warmS);
        }
    }

    void seeAir(double airC) {
        leastAirC = Math.min(leastAirC, airC);
    }

    Extremes extremes(double hottestTankC, double coldestMonthC) {
        double air = leastAirC == Double.POSITIVE_INFINITY ? coldestMonthC : leastAirC;
        return new Extremes(hottestTankC, coldestC, hottestDrawC, air, longestWarmS / DAY_S);
    }
}
