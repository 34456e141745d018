package loftcoil.engine.sun;

/**
 * The coating on one hidden face of a sealed unit: the face of the innermost pane that looks at the gap before it. It radiates
 * little, and it swallows and throws back some sun.
 *
 * <p>Emissivity and sun of the hard coat are those of "PYR B CLEAR 3MM" beside "CLEAR 3MM" in the glass data set of an open
 * building simulation (transmittance 0.740 beside 0.837, reflectance 0.09 and 0.10 beside 0.075, emissivity 0.20); those of the soft
 * one of "LoE CLEAR 3MM" there (0.630, 0.19 and 0.22, 0.10; from memory). Units made since about 2005 often have a soft coat of 0.02 to
 * 0.05, which passes 0.45 to 0.6: by EN 673 they lose up to a tenth less again.
 */
public enum GlassCoat {
    /** Plain glass. */
    NONE(1, 0, 0),
    /** Burnt into the glass when it was made. */
    HARD(0.740 / 0.837, 0.095 - 0.075, 0.20),
    /** Silver, only ever inside a sealed unit. */
    SOFT(0.630 / 0.837, 0.205 - 0.075, 0.10);

    /** What a plain pane of the data set throws back, square on. */
    private static final double PLAIN_REFLECTS = 0.075;

    private final double passes;
    private final double throwsBackMore;
    private final double emissivity;

    GlassCoat(double passes, double throwsBackMore, double emissivity) {
        this.passes = passes;
        this.throwsBackMore = throwsBackMore;
        this.emissivity = emissivity;
    }

    /** Share of what a plain pane passes that passes a coated one; taken as the same at all angles. */
    double passes() {
        return passes;
    }

    /** Share thrown back by a coated pane; the two sides are taken as alike, which they are within 0.015. */
    double thrown(double plain) {
        return plain + (1 - plain) * throwsBackMore / (1 - PLAIN_REFLECTS);
    }

    /**
     * Emissivity of the coated face.
     *
     * @param plain of the glass without a coat
     */
    double emissivity(double plain) {
        return this == NONE ? plain : emissivity;
    }
}
