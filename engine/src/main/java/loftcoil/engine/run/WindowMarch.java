package loftcoil.engine.run;

import loftcoil.engine.design.Window;
import loftcoil.engine.sun.WindowYear;
import loftcoil.engine.tank.SeenFace;
import loftcoil.engine.tank.TankSurroundings;

/** The window's part of a step: sun caught and heat lost through the panes. No method but the constructor allocates. */
final class WindowMarch {

    /** The loss through the panes bends with the temperature; it is taken straight over this much about the tank's mean. */
    private static final double SPAN_K = 6;

    private static final int MINUTES_PER_DAY = 1440;

    private static final double HOTTEST_C = 110;
    private static final double COLDEST_OUTSIDE_C = -60;
    private static final double LEAST_W_PER_M2K = 1e-3;

    private final WindowYear window;
    private final double creditedM2;
    private final double losingM2;
    private int firstDay;
    private int days = 1;

    /** Panes before a face of the tank: what sun of them reaches it, and how much of it glows behind them. */
    WindowMarch(WindowYear window, Window panes, SeenFace face) {
        this.window = window;
        creditedM2 = face.creditedM2(panes.areaM2(), panes.reflected());
        losingM2 = face.losingM2(panes.areaM2());
    }

    /** What follows happens under the mean weather of so many days from one on; days before and after the year count round. */
    void days(int newFirstDay, int newDays) {
        firstDay = newFirstDay;
        days = newDays;
    }

    /** Coldest air of the days at a minute of the day, °C. */
    double leastAirC(int minuteOfDay) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < days; i++) {
            least = Math.min(least, window.airC(minute(i, minuteOfDay)));
        }
        return least;
    }

    private int minute(int dayAfterFirst, int minuteOfDay) {
        return Math.floorMod(firstDay + dayAfterFirst, Calendar.DAYS) * MINUTES_PER_DAY + minuteOfDay;
    }

    /** Sets what acts at a minute of the day on a tank of a mean temperature, °C. */
    void act(int minuteOfDay, double meanC, TankSurroundings around) {
        double lowC = Math.min(Math.max(meanC - SPAN_K / 2, 0), HOTTEST_C - SPAN_K);
        double absorbed = 0;
        double lowLoss = 0;
        double highLoss = 0;
        for (int i = 0; i < days; i++) {
            int minute = minute(i, minuteOfDay);
            absorbed += window.absorbedWPerM2(minute);
            lowLoss += window.lossAtMinuteWPerM2(minute, lowC);
            highLoss += window.lossAtMinuteWPerM2(minute, lowC + SPAN_K);
        }
        around.sun(creditedM2 * absorbed / days);
        lowLoss /= days;
        double slope = Math.max(LEAST_W_PER_M2K, (highLoss / days - lowLoss) / SPAN_K);
        // A straight line through two losses is a conductance to the temperature at which nothing would be lost.
        double outsideC = Math.min(Math.max(lowC - lowLoss / slope, COLDEST_OUTSIDE_C), HOTTEST_C);
        around.window(losingM2 * slope, outsideC);
    }
}
