package loftcoil.engine.use;

import loftcoil.engine.fault.Allowed;
import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.tank.Layers;
import loftcoil.engine.tank.WaterHeat;

/**
 * A tap that mixes cold into water from a tank until it is as warm as wanted, and keeps count of what it gave. Where the tank
 * is cooler than wanted it gives what there is, unmixed, and counts what was missing.
 *
 * <p>The mix is set anew after each slice of at most a quarter of a layer, so it follows a draw that cools. Pipes between tank
 * and tap are not part of it. No method but the constructor allocates. Not safe for use by several threads.
 */
public final class MixedTap {

    private static final Allowed MASS = new Allowed(0, 1e5, "kg");
    private static final Allowed COLD = new Allowed(0, 60, "°C");
    private static final double SLICE_OF_LAYER = 0.25;

    /** A tap that counts as hot enough misses what was wanted by less than this: rounding, and no one's skin. */
    private static final double CLOSE_ENOUGH_K = 0.01;

    private final boolean refilled;
    private double hotKg;
    private double coldKg;
    private double wantedJ;
    private double usedJ;
    private double shortJ;
    private double asWantedKg;
    private double tooCoolKg;
    private double missingKg;

    /**
     * A tap that has given nothing yet.
     *
     * @param refilled whether cold water refills the tank as it is drawn; if not its level falls
     */
    public MixedTap(boolean refilled) {
        this.refilled = refilled;
    }

    /**
     * Draws mixed water.
     *
     * @param tank the tank, which loses what is drawn
     * @param mixedKg mass of mixed water in kg, 0 to 100 000
     * @param wantedC temperature wanted in °C, 0 to 95
     * @param coldC temperature of the cold supply, to the mixer and to the tank, in °C, 0 to 60
     * @throws RefusedException where a value is outside its range or not a number
     */
    public void draw(Layers tank, double mixedKg, double wantedC, double coldC) {
        double wanted = WaterHeat.jPerKg(DrawOff.MIXED.require("wantedC", wantedC));
        double cold = WaterHeat.jPerKg(COLD.require("coldC", coldC));
        double left = MASS.require("mixedKg", mixedKg);
        wantedJ += mixedKg * Math.max(0, wanted - cold);
        double slice = SLICE_OF_LAYER * tank.massKg(0);
        while (left > 0) {
            double part = Math.min(left, slice);
            double usedBefore = usedJ;
            if (!drawPart(tank, part, wanted, coldC)) {
                missingKg += left;
                shortJ += Math.max(0, left * (wanted - cold) - (usedJ - usedBefore));
                return;
            }
            left -= part;
        }
    }

    /** Draws a slice with one mix. @return false where the tank's port runs dry */
    private boolean drawPart(Layers tank, double mixedKg, double wanted, double coldC) {
        double cold = WaterHeat.jPerKg(coldC);
        double share = Mixing.share(WaterHeat.jPerKg(tank.drawC()), cold, wanted);
        double hot = mixedKg * share;
        double drawn = refilled ? tank.drawRefilling(hot, coldC) : tank.drawDown(hot);
        if (drawn < hot * (1 - 1e-12)) {
            hotKg += drawn;
            usedJ += tank.lastDrawJ() - drawn * cold;
            return false;
        }
        double given = (tank.lastDrawJ() + (mixedKg - hot) * cold) / mixedKg;
        hotKg += hot;
        coldKg += mixedKg - hot;
        usedJ += mixedKg * (given - cold);
        shortJ += mixedKg * Math.max(0, Math.max(wanted, cold) - given);
        boolean asWanted = WaterHeat.tempC(given) >= WaterHeat.tempC(wanted) - CLOSE_ENOUGH_K;
        asWantedKg += asWanted ? mixedKg : 0;
        tooCoolKg += asWanted ? 0 : mixedKg;
        return true;
    }

    /** Mass drawn from the tank, kg. */
    public double hotKg() {
        return hotKg;
    }

    /** Cold mixed in at the tap, kg. */
    public double coldKg() {
        return coldKg;
    }

    /** Heat wanted above the cold supply, J. */
    public double wantedJ() {
        return wantedJ;
    }

    /** Heat delivered above the cold supply, J. */
    public double usedJ() {
        return usedJ;
    }

    /** Heat missing against what was wanted, J. */
    public double shortJ() {
        return shortJ;
    }

    /** Mixed water given as warm as wanted, kg. */
    public double asWantedKg() {
        return asWantedKg;
    }

    /** Water given cooler than wanted, kg. */
    public double tooCoolKg() {
        return tooCoolKg;
    }

    /** Water not given at all, because the tank ran down to its port, kg. */
    public double missingKg() {
        return missingKg;
    }
}
