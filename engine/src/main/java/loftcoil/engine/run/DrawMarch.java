package loftcoil.engine.run;

import java.util.List;
import loftcoil.engine.tank.Layers;
import loftcoil.engine.use.DrawOff;
import loftcoil.engine.use.MixedTap;

/**
 * The draws' part of a step. A draw is taken whole in the step in which it starts: it lasts minutes, and the tank changes over
 * hours. No method but the constructor allocates.
 */
final class DrawMarch {

    private final MixedTap tap;
    private final int[] step;
    private final double[] kg;
    private final double[] litresPerKg;
    private final double[] mixedC;
    private final double[] wantedJ;
    private final boolean[] runs;
    private final double coldC;
    private int next;

    /** Heat missing at taps that do not run at all, J. */
    private double dryShortJ;
    /** Water given as warm as wanted, L. */
    double asWantedL;
    /** Water given cooler than wanted, L. */
    double tooCoolL;
    /** Water not given at all, L. */
    double missingL;

    DrawMarch(List<PlannedDraw> draws, int stepS, double coldC, boolean refilled) {
        this.coldC = coldC;
        tap = new MixedTap(refilled);
        int count = draws.size();
        step = new int[count];
        kg = new double[count];
        litresPerKg = new double[count];
        mixedC = new double[count];
        wantedJ = new double[count];
        runs = new boolean[count];
        for (int i = 0; i < count; i++) {
            DrawOff draw = draws.get(i).draw();
            step[i] = (int) (draw.atH() * 3600 / stepS);
            kg[i] = draw.mixedKg();
            litresPerKg[i] = draw.litres() / kg[i];
            mixedC[i] = draw.mixedC();
            wantedJ[i] = draw.wantedJ(coldC);
            runs[i] = draws.get(i).runs();
        }
    }

    /** Whether a draw starts in one of these steps of the day, the last not counted. */
    boolean startsWithin(int fromStep, int untilStep) {
        for (int start : step) {
            if (start >= fromStep && start < untilStep) {
                return true;
            }
        }
        return false;
    }

    /** Takes the draws of a step of the day; steps of a day come in order. */
    void step(int stepOfDay, Layers tank) {
        if (stepOfDay == 0) {
            next = 0;
        }
        while (next < step.length && step[next] <= stepOfDay) {
            if (runs[next]) {
                draw(next, tank);
            } else {
                dryShortJ += wantedJ[next];
                missingL += kg[next] * litresPerKg[next];
            }
            next++;
        }
    }

    private void draw(int i, Layers tank) {
        double asWanted = tap.asWantedKg();
        double tooCool = tap.tooCoolKg();
        double missing = tap.missingKg();
        tap.draw(tank, kg[i], mixedC[i], coldC);
        asWantedL += (tap.asWantedKg() - asWanted) * litresPerKg[i];
        tooCoolL += (tap.tooCoolKg() - tooCool) * litresPerKg[i];
        missingL += (tap.missingKg() - missing) * litresPerKg[i];
    }

    /** Heat missing against what was wanted, J. */
    double shortJ() {
        return tap.shortJ() + dryShortJ;
    }
}
