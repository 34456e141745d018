package loftcoil.engine.design;

import java.util.Optional;

/**
 * The panes in front of the dark tank.
 *
 * @param panes number of panes, 1 to 4
 * @param areaM2 area that lets sun in, m²; 0.05 to 20
 * @param tiltDeg tilt from the level, degrees; 0 to 90
 * @param azimuthDeg direction it faces, degrees clockwise from north; 0 to 360
 * @param gapMm gap between panes, mm; 3 to 60
 * @param absorptance share of the sun the tank's surface takes up; 0 to 1
 * @param shutter board over the panes at night; empty where there is none
 */
public record Window(
        int panes,
        double areaM2,
        double tiltDeg,
        double azimuthDeg,
        double gapMm,
        double absorptance,
        Optional<ShutterChoice> shutter) {

    /** The same window with another number of panes. */
    public Window withPanes(int newPanes) {
        return new Window(newPanes, areaM2, tiltDeg, azimuthDeg, gapMm, absorptance, shutter);
    }

    /** The same window of another area, m². */
    public Window withAreaM2(double newAreaM2) {
        return new Window(panes, newAreaM2, tiltDeg, azimuthDeg, gapMm, absorptance, shutter);
    }

    /** The same window tilted this much from the level, degrees. */
    public Window withTiltDeg(double newTiltDeg) {
        return new Window(panes, areaM2, newTiltDeg, azimuthDeg, gapMm, absorptance, shutter);
    }

    /** The same window facing this way, degrees clockwise from north. */
    public Window withAzimuthDeg(double newAzimuthDeg) {
        return new Window(panes, areaM2, tiltDeg, newAzimuthDeg, gapMm, absorptance, shutter);
    }

    /** The same window with this gap between panes, mm. */
    public Window withGapMm(double newGapMm) {
        return new Window(panes, areaM2, tiltDeg, azimuthDeg, newGapMm, absorptance, shutter);
    }

    /** The same window before a surface that takes up this share of the sun. */
    public Window withAbsorptance(double newAbsorptance) {
        return new Window(panes, areaM2, tiltDeg, azimuthDeg, gapMm, newAbsorptance, shutter);
    }

    /** The same window with another board at night, or none. */
    public Window withShutter(Optional<ShutterChoice> newShutter) {
        return new Window(panes, areaM2, tiltDeg, azimuthDeg, gapMm, absorptance, newShutter);
    }
}
