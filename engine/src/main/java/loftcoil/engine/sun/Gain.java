package loftcoil.engine.sun;

/** What the tank gains of the light on a window: its own share and what the warmed panes spare it. */
final class Gain {

    private final WindowLight light;
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
    }

    double wPerM2(TiltedLight tilted, SunAngles sun) {
        double gained = tilted.skyWPerM2() * skyShare + tilted.groundWPerM2() * groundShare;
        if (tilted.beamWPerM2() > 0) {
            double cosine = Math.max(0, Math.min(1, facing.cosIncidence(sun)));
            gained += tilted.beamWPerM2() * share(Math.toDegrees(Math.acos(cosine)));
        }
        return gained;
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
