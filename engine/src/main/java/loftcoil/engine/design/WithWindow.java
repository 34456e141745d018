package loftcoil.engine.design;

import java.util.Optional;

/** The ways to change the panes of a design. */
public sealed interface WithWindow permits Design {

    /** Panes that stay open to the night sky. */
    String NO_BOARD = "none";

    /** Panes with an insulating board over them at night. */
    String BOARD = "40 mm of foam board";

    /**
     * The panes; where there are none, those they are started with: two panes of 1 m² together, 12 mm apart, tilted 35° to the noon
     * sun, before a tank that takes up 0.92 of the sun.
     */
    static Window orStarted(Design design) {
        double noonSunDeg = design.site().latitudeDeg() >= 0 ? 180 : 0;
        return design.window().orElse(new Window(2, 1.0, 35, noonSunDeg, 12, 0.92, Optional.empty()));
    }

    private Design self() {
        return (Design) this;
    }

    /** The same design with this many panes, one behind the other. */
    default Design withPanes(int panes) {
        return self().withWindow(orStarted(self()).withPanes(panes));
    }

    /** The same design with this area of glass, m². */
    default Design withPaneAreaM2(double areaM2) {
        return self().withWindow(orStarted(self()).withAreaM2(areaM2));
    }

    /** The same design with the panes tilted this much from the level, degrees. */
    default Design withPaneTiltDeg(double tiltDeg) {
        return self().withWindow(orStarted(self()).withTiltDeg(tiltDeg));
    }

    /** The same design with the panes facing this way, degrees clockwise from north. */
    default Design withPaneAzimuthDeg(double azimuthDeg) {
        return self().withWindow(orStarted(self()).withAzimuthDeg(azimuthDeg));
    }

    /** The same design with this gap between panes, mm. */
    default Design withPaneGapMm(double gapMm) {
        return self().withWindow(orStarted(self()).withGapMm(gapMm));
    }

    /** The same design with a tank that takes up this share of the sun. */
    default Design withAbsorptance(double absorptance) {
        return self().withWindow(orStarted(self()).withAbsorptance(absorptance));
    }

    /**
     * The same design with {@link #BOARD} over its panes at night or with {@link #NO_BOARD}. A new board has 1.1 m² K/W and is shut
     * from 18:00 for fourteen hours.
     */
    default Design withShutter(String board) {
        Optional<ShutterChoice> shutter = board.equals(NO_BOARD)
                ? Optional.empty()
                : Optional.of(orStarted(self()).shutter().orElse(new ShutterChoice(1.1, 18, 14)));
        return self().withWindow(orStarted(self()).withShutter(shutter));
    }
}
