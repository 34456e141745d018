package loftcoil.engine.tank;

/**
 * The account of a tank since its march began: what came in, what went out, in J above 0 °C and kg. Written by {@link Layers}
 * alone. Not safe for use by several threads.
 */
public final class Ledger {

    private final double startJ;
    double refillJ;
    double drawnJ;
    double loopJ;
    double lossJ;
    double windowJ;
    double heatJ;
    double steamJ;
    double iceJ;
    /** What {@link Layers#goOn} added without any of the above, J. */
    double goneOnJ;

    double refillKg;
    double drawnKg;

    Ledger(double startJ) {
        this.startJ = startJ;
    }

    /** Heat brought by cold refill, J. */
    public double refillJ() {
        return refillJ;
    }

    /** Heat carried off by draws, J. */
    public double drawnJ() {
        return drawnJ;
    }

    /** Heat gained net from the loop, J; negative where the loop cooled the tank. */
    public double loopJ() {
        return loopJ;
    }

    /** Heat lost through lagging and bare wall, J. */
    public double lossJ() {
        return lossJ;
    }

    /** Heat lost net through a window, J, sunshine not counted. */
    public double windowJ() {
        return windowJ;
    }

    /** Heat put into layers, by sunshine or a heater, J. */
    public double heatJ() {
        return heatJ;
    }

    /** Heat that left as steam at the vent, J. Its mass, a kilogram for each 2.26 MJ, is taken as made up by the refill. */
    public double steamJ() {
        return steamJ;
    }

    /** Heat that freezing would have given up where water was held at 0 °C, J. Above zero means: this tank freezes. */
    public double iceJ() {
        return iceJ;
    }

    /** Mass of refill, kg. */
    public double refillKg() {
        return refillKg;
    }

    /** Mass drawn, kg. */
    public double drawnKg() {
        return drawnKg;
    }

    /** What all entries say the tank should hold now, J above 0 °C. */
    public double expectedJ() {
        return startJ + refillJ - drawnJ + loopJ - lossJ - windowJ + heatJ - steamJ + iceJ + goneOnJ;
    }

    /** All heat that moved, whichever way, J: the measure for a relative error. */
    public double movedJ() {
        return startJ
                + refillJ
                + drawnJ
                + Math.abs(loopJ)
                + Math.abs(lossJ)
                + Math.abs(windowJ)
                + Math.abs(heatJ)
                + steamJ
                + iceJ;
    }
}
