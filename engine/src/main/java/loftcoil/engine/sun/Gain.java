package loftcoil.engine.sun;

import java.util.Arrays;

/** What the tank gains of the light on a window: its own share and what the warmed panes spare it. */
final class Gain {

    /** The share of a beam is read from cubics between so many cosines: within 2e-5 of the panes' own (held by a test). */
    private static final int STEPS = 128;

    private final WindowLight light;
    private final double[] beamShares = new double[STEPS + 1];
    private final Facing facing;
    private final double[] inward;
    private final double skyShare;
    private final double groundShare;

    Gain(Glazing window, double[] inwardShares) {
        light = new WindowLight(window.panes(), window.face().absorptance());
        facing = window.facing();
        inward = inwardShares.clone();
        skyShare = share(facing.skyAngleDeg());
        groundShare = share(facing.groundAngleDeg());
        Arrays.setAll(beamShares, step -> share(Math.toDegrees(Math.acos((double) step / STEPS))));
    }

    double wPerM2(TiltedLight tilted, SunAngles sun) {
        double gained = tilted.skyWPerM2() * skyShare + tilted.groundWPerM2() * groundShare;
        if (tilted.beamWPerM2() > 0) {
            double cosine = Math.max(0, Math.min(1, facing.cosIncidence(sun)));
            gained += tilted.beamWPerM2() * beamShare(cosine);
        }
        return gained;
    }

    /** Share of a beam by the cosine of its incidence: cubics through four nodes, beyond the ends a node on the straight line. */
    double beamShare(double cosine) {
        double at = cosine * STEPS;
        int cell = Math.min((int) at, STEPS - 1);
        double x = at - cell;
        double near = beamShares[cell];
        double next = beamShares[cell + 1];
        double before = cell == 0 ? 2 * near - next : beamShares[cell - 1];
        double after = cell == STEPS - 1 ? 2 * next - near : beamShares[cell + 2];
        double slope = (next - before) / 2;
        double slopeThen = (after - near) / 2;
        double rise = next - near;
        return near + x * (slope + x * (3 * rise - 2 * slope - slopeThen + x * (slope + slopeThen - 2 * rise)));
    }

    /** Share of light at an angle that ends as heat in the tank. */
    double share(double incidenceDeg) {
        LightShares shares = light.at(incidenceDeg);
        double gained = shares.tank();
        for (int pane = 0; pane < inward.length; pane++) {
            gained += shares.panes().get(pane) * inward[pane];
        }
        return gained;
    }
}
