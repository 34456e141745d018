package loftcoil.engine.sun;

import loftcoil.engine.fault.RefusedException;

/**
 * The window before the dark tank. All figures are for one square metre of it; the frame's shadow and the edges are left
 * out.
 *
 * @param panes the panes
 * @param paneGapM air space between the panes in m, 0.003 to 0.2; of no effect for a single pane
 * @param face the dark side of the tank and its distance to the innermost pane
 * @param facing how it lies
 * @param surroundings what the outermost pane faces
 * @param shutter the board closed over it at night, or {@link Shutter#NONE}
 */
public record Glazing(
        PaneStack panes, double paneGapM, TankFace face, Facing facing, Surroundings surroundings, Shutter shutter) {

    /**
     * Checks the gap; the parts have checked themselves.
     *
     * @throws RefusedException where the gap is outside its range or not a number
     */
    public Glazing {
        AirGap.WIDTH.require("paneGapM", paneGapM);
    }

    /**
     * A window of salvaged float glass before a tank painted matt black, as far from the tank as the panes from each other,
     * in the usual surroundings, without a shutter.
     *
     * @param panes number of panes, 1 to 6
     * @param gapM each air space in m, 0.003 to 0.2
     * @param absorptance of the paint for sunlight, 0 to 1
     * @param facing how it lies
     * @throws RefusedException where a value is outside its range or not a number
     */
    public static Glazing salvaged(int panes, double gapM, double absorptance, Facing facing) {
        return new Glazing(
                new PaneStack(panes, Glass.SALVAGED_FLOAT),
                gapM,
                TankFace.painted(absorptance, gapM),
                facing,
                Surroundings.USUAL,
                Shutter.NONE);
    }

    /** The same window with a coating on its innermost pane; of no effect for a single pane. */
    public Glazing with(GlassCoat coat) {
        return new Glazing(
                new PaneStack(panes.panes(), panes.glass(), coat), paneGapM, face, facing, surroundings, shutter);
    }

    /** The same window with another shutter. */
    public Glazing with(Shutter other) {
        return new Glazing(panes, paneGapM, face, facing, surroundings, other);
    }

    /** The same window lying otherwise. */
    public Glazing with(Facing other) {
        return new Glazing(panes, paneGapM, face, other, surroundings, shutter);
    }

    /** The same window in other surroundings. */
    public Glazing with(Surroundings other) {
        return new Glazing(panes, paneGapM, face, facing, other, shutter);
    }
}
