package loftcoil.engine.run;

/**
 * Where the lost heat went, all in one unit (J while a march counts, kWh in its results).
 *
 * @param tank through the tank's coat, its bare wall and its ports
 * @param window through the panes, sun not counted
 * @param legsLit from the legs of the loop while the fire burns
 * @param legsOut from legs and coil with the fire out, by water that drifts round
 * @param steam by the vent, where water boils
 * @param ice less than 0: what freezing gives up where water is held at 0 °C
 */
public record Losses(double tank, double window, double legsLit, double legsOut, double steam, double ice) {

    /** All of it. */
    public double total() {
        return tank + window + legsLit + legsOut + steam + ice;
    }

    Losses and(Losses other, double times) {
        return new Losses(
                tank + times * other.tank,
                window + times * other.window,
                legsLit + times * other.legsLit,
                legsOut + times * other.legsOut,
                steam + times * other.steam,
                ice + times * other.ice);
    }

    Losses since(Losses before) {
        return new Losses(
                tank - before.tank,
                window - before.window,
                legsLit - before.legsLit,
                legsOut - before.legsOut,
                steam - before.steam,
                ice - before.ice);
    }

    Losses inKWh() {
        double each = 1 / Totals.J_PER_KWH;
        return new Losses(tank * each, window * each, legsLit * each, legsOut * each, steam * each, ice * each);
    }
}
