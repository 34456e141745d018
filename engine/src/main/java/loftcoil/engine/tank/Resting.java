package loftcoil.engine.tank;

import loftcoil.engine.water.Water;

/**
 * A step of time without flow: loss to the surroundings and through a window, heat put in, conduction between layers.
 *
 * <p>Loss and gain of a layer follow the exact solution for a constant conductance, T − T∞ ~ exp(−Gt/C), through its mean over
 * the step; long steps are cut so that Gt/C ≤ ¼. Conduction is explicit, cut so that no layer can overshoot. Each heat is
 * booked as it is moved.
 */
final class Resting {

    private static final double LONGEST = 0.25;

    /** Heat capacity that shapes the exponential within a step, J/(kg K); what is booked follows the real one. */
    private static final double TYPICAL_CP = 4185;

    /** No water between 0 and 110 °C has less heat capacity, J/(kg K). */
    private static final double LEAST_CP = 4175;

    private final double[] jPerKg;
    private final double[] kg;
    private final double[] flowJ;
    private final Ledger ledger;
    private final double fullKg;
    private final double boilJPerKg;
    private final double areaOverThicknessM;

    Resting(Layers layers, LayerPlan plan) {
        jPerKg = layers.jPerKg;
        kg = layers.kg;
        ledger = layers.ledger();
        fullKg = layers.fullKg;
        flowJ = new double[kg.length];
        boilJPerKg = WaterHeat.jPerKg(plan.boilC());
        areaOverThicknessM = plan.shape().footprintM2() / layers.thicknessM;
    }

    void rest(int wet, double seconds, Surroundings around) {
        for (int i = 0; i < wet; i++) {
            exchange(i, i == wet - 1, seconds, around);
        }
        if (wet > 1) {
            conduct(wet, seconds);
        }
    }

    private void exchange(int i, boolean top, double seconds, Surroundings around) {
        double share = kg[i] / (fullKg * kg.length);
        double loss = around.sideWPerK * share + (top ? around.topWPerK : 0) + (i == 0 ? around.bottomWPerK : 0);
        double window = around.windowWPerK * share;
        double watts = around.sunW * share + around.heaterW[i];
        double sum = loss + window;
        double capacity = kg[i] * TYPICAL_CP;
        int parts = 1 + (int) (sum * seconds / (capacity * LONGEST));
        double dt = seconds / parts;
        double x = sum * dt / capacity;
        // Mean rise over the step for each watt at its start: t/C (x − 1 + e^−x)/x², as a series good to 1e-9 for x ≤
        // ¼.
        double drift = dt / capacity / 2 * (1 - x / 3 * (1 - x / 4 * (1 - x / 5 * (1 - x / 6 * (1 - x / 7)))));
        for (int part = 0; part < parts; part++) {
            double own = WaterHeat.tempC(jPerKg[i]);
            double pull = loss * (around.aroundC - own) + window * (around.windowC - own) + watts;
            double meanC = own + pull * drift;
            double lostJ = loss * (meanC - around.aroundC) * dt;
            double paneJ = window * (meanC - around.windowC) * dt;
            book(i, lostJ, paneJ, watts * dt);
        }
    }

    private void book(int i, double lostJ, double paneJ, double heatJ) {
        ledger.lossJ += lostJ;
        ledger.windowJ += paneJ;
        ledger.heatJ += heatJ;
        double after = jPerKg[i] + (heatJ - lostJ - paneJ) / kg[i];
        if (after > boilJPerKg) {
            ledger.steamJ += kg[i] * (after - boilJPerKg);
            after = boilJPerKg;
        } else if (after < 0) {
            ledger.iceJ -= kg[i] * after;
            after = 0;
        }
        jPerKg[i] = after;
    }

    private void conduct(int wet, double seconds) {
        double middleC = WaterHeat.tempC(jPerKg[wet / 2]);
        double perK = Water.conductivityWPerMK(Math.max(0, Math.min(110, middleC))) * areaOverThicknessM;
        double lightestJPerK = Math.min(fullKg, kg[wet - 1]) * LEAST_CP;
        int parts = 1 + (int) (perK * seconds / (lightestJPerK * LONGEST));
        double perKJ = perK * seconds / parts;
        for (int part = 0; part < parts; part++) {
            double below = WaterHeat.tempC(jPerKg[0]);
            for (int i = 1; i < wet; i++) {
                double own = WaterHeat.tempC(jPerKg[i]);
                flowJ[i] = perKJ * (own - below);
                below = own;
            }
            for (int i = 1; i < wet; i++) {
                jPerKg[i - 1] += flowJ[i] / kg[i - 1];
                jPerKg[i] -= flowJ[i] / kg[i];
            }
        }
    }
}
