package loftcoil.engine.start;

import java.util.Locale;

/**
 * How strongly water changes places inside a tube that is level or holds colder water over warmer: not known to a factor of three,
 * so a start is tried with each.
 */
public enum Counterflow {
    /** None: resting water carries no heat. */
    NONE(0),
    /** Some: a third of what was measured in long upright tubes, for bends and a flow that passes. */
    SOME(0.3),
    /** Full: about what was measured in long upright tubes. */
    FULL(1);

    private final double strength;

    Counterflow(double strength) {
        this.strength = strength;
    }

    /** The factor C of {@link loftcoil.engine.loop.MarchDetail#counterflow}. */
    public double strength() {
        return strength;
    }

    /** Its code: {@code none}, {@code some} or {@code full}. */
    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }
}
