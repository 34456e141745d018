package loftcoil.engine.sheet;

import java.util.ArrayList;
import java.util.List;

/**
 * Which way each leg's level run is drawn. Both sides start at the coil and are followed up to the tank; the ports they
 * reach must lie within one tank's width, the cold one preferably left of the hot one and both near the middle of the
 * coil, and the hot pipe preferably does not pass in front of the tank. With a few legs all ways can be tried.
 *
 * @param cold sideways steps of the cold legs from the coil up, m, right positive
 * @param hot sideways steps of the hot legs from the coil up, m
 * @param outletX x of the coil's outlet, m; its inlet is at 0
 */
record Folding(List<Double> cold, List<Double> hot, double outletX) {

    /** More legs than this on a side and the later ones just alternate. */
    private static final int MOST_TRIED = 8;

    private static final double TOO_WIDE = 1000;
    private static final double CROSSED = 1;
    private static final double BEFORE_TANK = 0.5;

    /** Where the coil ends and how much width the tank offers, m. */
    record Span(double outletX, double tankWidthM) {}

    double coldPortX() {
        return sum(cold);
    }

    double hotPortX() {
        return outletX + sum(hot);
    }

    static Folding of(List<Double> coldRuns, List<Double> hotRuns, Span span) {
        Folding best = new Folding(steps(coldRuns, 0), steps(hotRuns, 0), span.outletX());
        for (int cold = 0; cold < ways(coldRuns); cold++) {
            for (int hot = 0; hot < ways(hotRuns); hot++) {
                Folding tried = new Folding(steps(coldRuns, cold), steps(hotRuns, hot), span.outletX());
                if (tried.badness(span) < best.badness(span)) {
                    best = tried;
                }
            }
        }
        return best.squeezed(span);
    }

    /** Where even the best way does not bring both ports to one tank, steps are drawn short by one common share. */
    private Folding squeezed(Span span) {
        double apart = hotPortX() - coldPortX();
        double excess = Math.abs(apart) - span.tankWidthM();
        if (excess <= 0) {
            return this;
        }
        double moved = Math.abs(sum(hot) - sum(cold));
        double share = moved == 0 ? 1 : Math.max(0, 1 - excess / moved);
        return new Folding(scaled(cold, share), scaled(hot, share), outletX);
    }

    private double badness(Span span) {
        double apart = hotPortX() - coldPortX();
        double tooWide = Math.max(0, Math.abs(apart) - span.tankWidthM());
        double offCentre = Math.abs((hotPortX() + coldPortX()) / 2 - outletX / 2);
        return TOO_WIDE * tooWide + (apart < 0 ? CROSSED : 0) + offCentre + BEFORE_TANK * beforeTankM();
    }

    /** How far the turns of the hot pipe lie on the far side of its port, where the tank is, m. */
    private double beforeTankM() {
        double x = outletX;
        double before = 0;
        for (double step : hot) {
            before += Math.max(0, hotPortX() - x);
            x += step;
        }
        return before;
    }

    private static int ways(List<Double> runs) {
        return 1 << Math.min(runs.size(), MOST_TRIED);
    }

    private static List<Double> steps(List<Double> runs, int way) {
        List<Double> steps = new ArrayList<>();
        for (int i = 0; i < runs.size(); i++) {
            int bit = i < MOST_TRIED ? way >> i : i;
            steps.add((bit & 1) == 0 ? -runs.get(i) : runs.get(i));
        }
        return steps;
    }

    private static List<Double> scaled(List<Double> steps, double share) {
        return steps.stream().map(step -> step * share).toList();
    }

    private static double sum(List<Double> steps) {
        return steps.stream().mapToDouble(Double::doubleValue).sum();
    }
}
