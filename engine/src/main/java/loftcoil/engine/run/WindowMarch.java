package loftcoil.engine.run;

import loftcoil.engine.design.Window;
import loftcoil.engine.sun.WindowYear;
import loftcoil.engine.tank.Layers;
import loftcoil.engine.tank.SeenFace;
import loftcoil.engine.tank.Surroundings;

/** The window's part of a step: sun caught and heat lost through the panes. No method but the constructor allocates. */
final class WindowMarch {

    /** The loss through the panes bends with the temperature; it is taken straight over this much about the tank's mean. */
    private static final double SPAN_K = 6;

    private static final double HOTTEST_C = 110;
    private static final double COLDEST_OUTSIDE_C = -60;
    private static final double LEAST_W_PER_M2K = 1e-3;

    private final WindowYear window;
    private final double creditedM2;
    private final double losingM2;

    /** Panes before a face of the tank: what sun of them reaches it, and how much of it glows behind them. */
    WindowMarch(WindowYear window, Window panes, SeenFace face) {
        this.window = window;
        creditedM2 = face.creditedM2(panes.areaM2(), panes.reflected());
        losingM2 = face.losingM2(panes.areaM2());
    }

    double airC(int minute) {
        return window.airC(minute);
    }

    /** Sets what acts on the tank at a minute of the year. */
    void act(int minute, Layers tank, Surroundings around) {
        around.sun(creditedM2 * window.absorbedWPerM2(minute));
        double lowC = Math.min(Math.max(tank.meanC() - SPAN_K / 2, 0), HOTTEST_C - SPAN_K);
        double lowLoss = window.lossAtMinuteWPerM2(minute, lowC);
        double slope = (window.lossAtMinuteWPerM2(minute, lowC + SPAN_K) - lowLoss) / SPAN_K;
        slope = Math.max(LEAST_W_PER_M2K, slope);
        // A straight line through two losses is a conductance to the temperature at which nothing would be lost.
        double outsideC = Math.min(Math.max(lowC - lowLoss / slope, COLDEST_OUTSIDE_C), HOTTEST_C);
        around.window(losingM2 * slope, outsideC);
    }
}
