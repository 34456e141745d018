package loftcoil.engine.tank;

import java.util.Arrays;
import java.util.stream.IntStream;
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

    /** Conductivity of water in the middle of each kelvin from 0 °C, W/(m K): IAPWS SR6-08, too dear to reckon each minute. */
    private static final double[] CONDUCTIVITY = IntStream.range(0, 110)
            .mapToDouble(c -> Water.conductivityWPerMK(c + 0.5))
            .toArray();

    private final double[] jPerKg;
    private final double[] kg;
    private final Ledger ledger;
    private final double[] fullKg;
    private final double[] perFullKg;
    private final double leastKg;
    private final double shareOfKg;
    private final double boilJPerKg;
    private final double[] areaOverThicknessM;

    /** The largest of them up to each layer. */
    private final double[] mostM;

    Resting(Layers layers, LayerPlan plan) {
        jPerKg = layers.jPerKg;
        kg = layers.kg;
        ledger = layers.ledger();
        fullKg = layers.fullKg;
        perFullKg = Arrays.stream(fullKg).map(full -> 1 / full).toArray();
        leastKg = layers.leastKg;
        shareOfKg = 1 / Arrays.stream(fullKg).sum();
        boilJPerKg = WaterHeat.jPerKg(plan.boilC());
        areaOverThicknessM = areasOverThicknesses(plan);
        mostM = areaOverThicknessM.clone();
        for (int i = 1; i < mostM.length; i++) {
            mostM[i] = Math.max(mostM[i], mostM[i - 1]);
        }
    }

    /** Area of the section between two layers over the way between their middles, for each layer but the lowest, m. */
    private static double[] areasOverThicknesses(LayerPlan plan) {
        int count = plan.layers();
        double[] edges = plan.cutsM();
        double[] below = plan.cutsM3();
        double[] ratios = new double[count];
        for (int i = 1; i < count; i++) {
            // The mean section of two slices is their volume over their height; the way between their middles is half
            // of that height.
            double heightM = edges[i + 1] - edges[i - 1];
            ratios[i] = (below[i + 1] - below[i - 1]) / heightM / (heightM / 2);
        }
        return ratios;
    }

    void rest(int wet, double seconds, TankSurroundings around) {
        exchange(0, wet == 1, seconds, around);
        between(wet - 1, seconds, around);
        if (wet > 1) {
            exchange(wet - 1, true, seconds, around);
            conduct(wet, seconds);
        }
    }

    /** The layers between the lowest and the top one, which are full and differ in nothing but their heat and their heaters. */
    private void between(int top, double seconds, TankSurroundings around) {
        // All for each kilogram: by it, layers of any size are alike.
        double loss = around.sideWPerK * shareOfKg;
        double window = around.windowWPerK * shareOfKg;
        double x = (loss + window) * seconds * (1 / TYPICAL_CP);
        double sunW = around.sunW * shareOfKg;
        double drift = seconds * (1 / TYPICAL_CP) * meanRise(x);
        double driven = loss * around.aroundC + window * around.windowC;
        double lostK = 0;
        double paneK = 0;
        double heatW = 0;
        for (int i = 1; i < top; i++) {
            if (x > LONGEST || kg[i] != fullKg[i]) {
                exchange(i, false, seconds, around);
                continue;
            }
            double watts = sunW + around.heaterW[i] * perFullKg[i];
            double own = WaterHeat.tempC(jPerKg[i]);
            double meanC = own + (driven - (loss + window) * own + watts) * drift;
            lostK += kg[i] * (meanC - around.aroundC);
            paneK += kg[i] * (meanC - around.windowC);
            heatW += kg[i] * watts;
            hold(i, jPerKg[i] + (driven - (loss + window) * meanC + watts) * seconds);
        }
        book(loss * lostK * seconds, window * paneK * seconds, heatW * seconds);
    }

    private void exchange(int i, boolean top, double seconds, TankSurroundings around) {
        double perKg = perKg(i);
        double share = kg[i] * shareOfKg;
        double loss = around.sideWPerK * share + (top ? around.topWPerK : 0) + (i == 0 ? around.bottomWPerK : 0);
        double window = around.windowWPerK * share;
        double watts = around.sunW * share + around.heaterW[i];
        double kelvinPerW = seconds * perKg * (1 / TYPICAL_CP);
        double x = (loss + window) * kelvinPerW;
        int parts = x <= LONGEST ? 1 : 1 + (int) (x / LONGEST);
        double part = parts == 1 ? 1 : 1d / parts;
        double dt = seconds * part;
        double drift = kelvinPerW * part * meanRise(x * part);
        for (int n = 0; n < parts; n++) {
            double own = WaterHeat.tempC(jPerKg[i]);
            double pull = loss * (around.aroundC - own) + window * (around.windowC - own) + watts;
            double meanC = own + pull * drift;
            double lostJ = loss * (meanC - around.aroundC) * dt;
            double paneJ = window * (meanC - around.windowC) * dt;
            book(lostJ, paneJ, watts * dt);
            hold(i, jPerKg[i] + (watts * dt - lostJ - paneJ) * perKg);
        }
    }

    /** One over the mass of a layer: a division saved for all layers but the top ones. */
    private double perKg(int i) {
        return kg[i] == fullKg[i] ? perFullKg[i] : 1 / kg[i];
    }

    /** Mean rise over a step for each unit at its start, (x − 1 + e^−x)/x², as a series good to 1e-9 for x up to a quarter. */
    private static double meanRise(double x) {
        return 1 / 2d + x * (-1 / 6d + x * (1 / 24d + x * (-1 / 120d + x * (1 / 720d - x / 5040d))));
    }

    private void book(double lostJ, double paneJ, double heatJ) {
        ledger.lossJ += lostJ;
        ledger.windowJ += paneJ;
        ledger.heatJ += heatJ;
    }

    /** Sets the heat of a layer, between ice and steam. */
    private void hold(int i, double after) {
        if (after > boilJPerKg) {
            ledger.steamJ += kg[i] * (after - boilJPerKg);
            jPerKg[i] = boilJPerKg;
        } else if (after < 0) {
            ledger.iceJ -= kg[i] * after;
            jPerKg[i] = 0;
        } else {
            jPerKg[i] = after;
        }
    }

    private void conduct(int wet, double seconds) {
        int middleC = (int) Math.max(0, Math.min(109, WaterHeat.tempC(jPerKg[wet / 2])));
        double perK = CONDUCTIVITY[middleC];
        double mostPerK = perK * mostM[wet - 1];
        double lightestJPerK = Math.min(leastKg, kg[wet - 1]) * LEAST_CP;
        int parts = 1 + (int) (mostPerK * seconds / (lightestJPerK * LONGEST));
        double perKJ = perK * seconds / parts;
        for (int part = 0; part < parts; part++) {
            double below = WaterHeat.tempC(jPerKg[0]);
            double outJ = 0;
            for (int i = 1; i < wet; i++) {
                double own = WaterHeat.tempC(jPerKg[i]);
                double intoJ = perKJ * areaOverThicknessM[i] * (own - below);
                jPerKg[i - 1] += (intoJ - outJ) * perKg(i - 1);
                outJ = intoJ;
                below = own;
            }
            jPerKg[wet - 1] -= outJ * perKg(wet - 1);
        }
    }
}
