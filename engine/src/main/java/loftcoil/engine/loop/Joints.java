package loftcoil.engine.loop;

import java.util.List;

/**
 * Losses where the bore changes between two runs: Borda–Carnot {@code (1 − A1/A2)²} where it widens and
 * {@code 0.5 (1 − A2/A1)} where it narrows suddenly, both on the speed in the narrower tube. Idelchik, Handbook of
 * Hydraulic Resistance, sections 3 and 4 (from memory).
 */
final class Joints {

    private Joints() {}

    static void join(List<Segment> segments) {
        for (int i = 0; i + 1 < segments.size(); i++) {
            Segment near = segments.get(i);
            Segment far = segments.get(i + 1);
            boolean widens = far.areaM2 > near.areaM2;
            Segment narrow = widens ? near : far;
            Segment wide = widens ? far : near;
            double ratio = narrow.areaM2 / wide.areaM2;
            double widening = (1 - ratio) * (1 - ratio);
            double narrowing = 0.5 * (1 - ratio);
            narrow.fixedLoss[Direction.FORWARD] += widens ? widening : narrowing;
            narrow.fixedLoss[Direction.BACKWARD] += widens ? narrowing : widening;
        }
    }
}
