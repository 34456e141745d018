package loftcoil.engine.run;

import loftcoil.engine.tank.Layers;
import loftcoil.engine.tank.LegionellaLife;

/**
 * Notes the extremes of a march as it goes; allocates nothing.
 *
 * <p>Water stands warm from the first hour in which some of it is in the range of {@link LegionellaLife} until the whole tank has
 * been heated through, or has been under that range for a whole day: cold stops the growth and kills nothing, so hours between warm
 * hours count with them (the day is common practice, no source). Heating through is judged at the
 * cold port, where the coldest water stands that the loop can reach; what is below it is renewed by every draw, is let out weekly by
 * the drain cock (work list, caution), and no march in layers can say how warm it comes. A year stands for every year, so
 * that no time is longer than it.
 */
final class ExtremesWatch {

    private static final double DAY_S = 86_400;

    private double coldestC;
    private double hottestDrawC;
    private double leastAirC;
    private double longestWarmS;
    private double warmS;
    private double betweenS;
    private double coldS;
    private double decades;
    private boolean forgotten;
    private double warmBeforeS;
    private double coldBeforeS;

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

    /** A day begins that may have to stand for others. */
    void beginDay() {
        forgotten = false;
        warmBeforeS = warmS;
        coldBeforeS = coldS;
    }

    /** So many more days like the one that ends now. */
    void again(int days) {
        if (forgotten) {
            // Each of them begins anew at the same hour.
            return;
        }
        double seconds = days * DAY_S;
        coldS += coldS - coldBeforeS >= DAY_S ? seconds : 0;
        if (coldS >= DAY_S) {
            forget();
        } else if (warmS > warmBeforeS) {
            warmS += seconds;
            longestWarmS = Math.max(longestWarmS, warmS);
        } else if (warmS > 0) {
            betweenS += seconds;
        }
    }

    void see(Layers tank, double seconds) {
        double baseC = tank.tempC(0);
        coldestC = Math.min(coldestC, baseC);
        hottestDrawC = Math.max(hottestDrawC, tank.drawC());
        double portC = tank.coldPortC();
        decades = portC >= LegionellaLife.DIES_FROM_C ? decades + seconds * LegionellaLife.decadesPerS(portC) : 0;
        if (decades >= LegionellaLife.THOROUGH_DECADES) {
            forget();
        } else {
            warm(tank.topC(), baseC, seconds);
        }
    }

    private void warm(double topC, double baseC, double seconds) {
        coldS = topC < LegionellaLife.GROWS_FROM_C ? coldS + seconds : 0;
        if (coldS >= DAY_S) {
            forget();
        } else if (topC >= LegionellaLife.GROWS_FROM_C && baseC <= LegionellaLife.GROWS_TO_C) {
            warmS += betweenS + seconds;
            betweenS = 0;
            longestWarmS = Math.max(longestWarmS, warmS);
        } else if (warmS > 0) {
            betweenS += seconds;
        }
    }

    private void forget() {
        forgotten = true;
        warmS = 0;
        betweenS = 0;
    }

    void seeAir(double airC) {
        leastAirC = Math.min(leastAirC, airC);
    }

    Extremes extremes(double hottestTankC, double coldestMonthC) {
        double air = leastAirC == Double.POSITIVE_INFINITY ? coldestMonthC : leastAirC;
        double days = Math.min(longestWarmS / DAY_S, Calendar.DAYS);
        return new Extremes(hottestTankC, coldestC, hottestDrawC, air, days);
    }
}
