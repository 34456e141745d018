package loftcoil.engine.fire;

/** Where in the heater the coil sits, which decides how much of its surface gas and embers reach. */
public enum CoilPlace {
    /** Free in the flame: gas all round, embers see half of the tube. */
    FLAME_PATH("in the flame path", 1.0, 0.5, true),
    /** Against a wall of the firebox: gas and embers reach the half that looks into the fire. */
    FIREBOX_WALL("against the firebox wall", 0.5, 0.5, true),
    /** Behind the baffle on the way to the flue: gas all round, no sight of embers or flame. */
    BEHIND_BAFFLE("behind the baffle", 1.0, 0.0, false);

    private final String words;
    private final double gasShare;
    private final double emberShare;
    private final boolean inFlame;

    CoilPlace(String words, double gasShare, double emberShare, boolean inFlame) {
        this.words = words;
        this.gasShare = gasShare;
        this.emberShare = emberShare;
        this.inFlame = inFlame;
    }

    /** The place in plain words. */
    public String words() {
        return words;
    }

    /** Share of the tube's surface that hot gas reaches, 0 to 1. Common practice, no source. */
    public double gasShare() {
        return gasShare;
    }

    /** Share of the tube's surface that sees embers and flame, 0 to 1. Common practice, no source. */
    public double emberShare() {
        return emberShare;
    }

    /** Whether the gas around the coil is still a flame. */
    public boolean inFlame() {
        return inFlame;
    }
}
