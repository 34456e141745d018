package loftcoil.engine.design;

import java.util.Optional;
import java.util.OptionalDouble;

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
 * @param reflectorShare share of the sun that passes beside the tank and that reflectors bring to it; 0 to 0.95; empty for none
 */
public record Window(
        int panes,
        double areaM2,
        double tiltDeg,
        double azimuthDeg,
        double gapMm,
        double absorptance,
        Optional<ShutterChoice> shutter,
        OptionalDouble reflectorShare) {

    /** Panes with no reflectors behind them. */
    public Window(
            int panes,
            double areaM2,
            double tiltDeg,
            double azimuthDeg,
            double gapMm,
            double absorptance,
            Optional<ShutterChoice> shutter) {
        this(panes, areaM2, tiltDeg, azimuthDeg, gapMm, absorptance, shutter, OptionalDouble.empty());
    }

    /** Share of the sun beside the tank that reflectors bring to it; 0 where there are none. */
    public double reflected() {
        return reflectorShare.orElse(0);
    }
}
