package loftcoil.engine.tank;

import java.util.ArrayList;
import java.util.List;
import loftcoil.engine.fault.Allowed;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.fault.RefusedException;

/**
 * The part of a tank that panes look at. The outline is what beams square on to the panes can meet; the surface behind that
 * outline is larger where the tank is round, and it is this that glows and warms the air behind the glass. Of a round tank
 * half the wall is taken. The lid belongs to it where panes lie flatter than {@value #LID_TO_DEG}° and is then bare and dark
 * like the wall; before steeper panes it keeps its coat.
 *
 * @param outlineM2 area of the outline, m²; 0.001 to 200
 * @param wallM2 surface of the wall behind it, m²; 0 to 200
 * @param lidM2 surface of the lid behind it, m²; 0 to 200
 */
public record SeenFace(double outlineM2, double wallM2, double lidM2) {

    /** Panes steeper than this see no lid worth baring; common practice, no source. */
    static final double LID_TO_DEG = 75;

    /** How many times the surface fixed reflectors can fill at most: 1 / sin 30°. */
    static final double CONCENTRATES = 2;

    /** The tilts accepted. */
    private static final Allowed TILT = new Allowed(0, 90, "°");

    private static final Allowed AREA = new Allowed(0, 200, "m²");

    /** The shares of the light past the tank that reflectors may bring to it; no mirror gives back all. */
    public static final Allowed REFLECTED = new Allowed(0, 0.95, "");

    /**
     * Checks the values.
     *
     * @throws RefusedException where an area is outside its range or not a number; all faults at once
     */
    public SeenFace {
        List<Fault> faults = new ArrayList<>();
        new Allowed(0.001, 200, "m²").faultIn("outlineM2", outlineM2).ifPresent(faults::add);
        AREA.faultIn("wallM2", wallM2).ifPresent(faults::add);
        AREA.faultIn("lidM2", lidM2).ifPresent(faults::add);
        if (!faults.isEmpty()) {
            throw new RefusedException(faults);
        }
    }

    /** An upright wall and a flat lid seen from tilted panes: sin of the tilt of the one, cos of the other. */
    static SeenFace upright(double wallOutlineM2, double wallM2, double lidM2, double tiltDeg) {
        double tilt = Math.toRadians(TILT.require("tiltDeg", tiltDeg));
        boolean lid = tiltDeg <= LID_TO_DEG;
        double outline = wallOutlineM2 * Math.sin(tilt) + (lid ? lidM2 * Math.cos(tilt) : 0);
        return new SeenFace(outline, tiltDeg > 0 ? wallM2 : 0, lid ? lidM2 : 0);
    }

    /** A face whose outline is the same from every tilt. */
    static SeenFace round(double outlineM2, double wallM2, double tiltDeg) {
        TILT.require("tiltDeg", tiltDeg);
        return new SeenFace(outlineM2, wallM2, 0);
    }

    /** Bare surface the panes look at, m². */
    public double surfaceM2() {
        return wallM2 + lidM2;
    }

    /**
     * The area of panes whose light reaches the tank: up to the outline all of it, beyond it the share that reflectors bring, and
     * nothing of panes larger than {@value #CONCENTRATES} times the bare surface. A fixed trough that takes in all light within θ
     * of its axis brings at most 1/sin θ panes to each surface (Winston, Solar Energy 16 (1974) 89); a sun that is followed by
     * nobody wanders 30° from the axis within two hours, so θ is taken as 30°.
     *
     * @param paneM2 area of the panes in m², 0 to 50
     * @param reflected share of the light past the tank that reflectors bring to it, 0 to 0.95
     * @return m²
     * @throws RefusedException where a value is outside its range or not a number
     */
    public double creditedM2(double paneM2, double reflected) {
        double mirroredM2 = Math.min(pane(paneM2), CONCENTRATES * surfaceM2());
        double beyondM2 = REFLECTED.require("reflected", reflected) * Math.max(0, mirroredM2 - outlineM2);
        return Math.min(paneM2, outlineM2) + beyondM2;
    }

    /**
     * The area that loses heat through the panes: of panes smaller than the bare surface their own, of larger ones that surface.
     * Duffie and Beckman, 4th ed., section 7.3, reckon so (from memory): the gain on the aperture, the loss on the receiver. Panes
     * twice as large as the surface lose more than that, by up to a half where there are three, a sixth where there is one.
     *
     * @param paneM2 area of the panes in m², 0 to 50
     * @return m²
     * @throws RefusedException where the area is outside its range or not a number
     */
    public double losingM2(double paneM2) {
        return Math.min(pane(paneM2), surfaceM2());
    }

    private static double pane(double paneM2) {
        return new Allowed(0, 50, "m²").require("paneM2", paneM2);
    }
}
