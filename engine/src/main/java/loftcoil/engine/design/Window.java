package loftcoil.engine.design;

import java.util.Optional;
import java.util.OptionalDouble;
import loftcoil.engine.sun.Facing;
import loftcoil.engine.sun.GlassCoat;
import loftcoil.engine.sun.Glazing;
import loftcoil.engine.sun.Shutter;

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
 * @param coating of the sealed unit next to the tank; empty for plain glass
 * @param toughened how many panes are toughened glass, counted from the tank, 0 to 4; more than there are count as all; empty for none
 */
public record Window(
        int panes,
        double areaM2,
        double tiltDeg,
        double azimuthDeg,
        double gapMm,
        double absorptance,
        Optional<ShutterChoice> shutter,
        OptionalDouble reflectorShare,
        Optional<Coating> coating,
        Optional<Integer> toughened) {

    private static final double M_PER_MM = 0.001;

    /** Coatings of sealed units. */
    public enum Coating implements Coded {
        /** Burnt in. */
        HARD("hard", GlassCoat.HARD),
        /** Silver. */
        SOFT("soft", GlassCoat.SOFT);

        private final String code;
        private final GlassCoat coat;

        Coating(String code, GlassCoat coat) {
            this.code = code;
            this.coat = coat;
        }

        @Override
        public String code() {
            return code;
        }
    }

    /** Plain panes with no reflectors behind them. */
    public Window(
            int panes,
            double areaM2,
            double tiltDeg,
            double azimuthDeg,
            double gapMm,
            double absorptance,
            Optional<ShutterChoice> shutter) {
        this(
                panes,
                areaM2,
                tiltDeg,
                azimuthDeg,
                gapMm,
                absorptance,
                shutter,
                OptionalDouble.empty(),
                Optional.empty(),
                Optional.empty());
    }

    /** Share of the sun beside the tank that reflectors bring to it; 0 where there are none. */
    public double reflected() {
        return reflectorShare.orElse(0);
    }

    /** The panes before the tank, with the board that is shut over them. */
    Glazing glazing() {
        Shutter board = shutter.map(
                        choice -> new Shutter(choice.resistanceM2KPerW(), choice.shutFromH(), choice.shutForH()))
                .orElse(Shutter.NONE);
        return Glazing.salvaged(panes, gapMm * M_PER_MM, absorptance, new Facing(tiltDeg, azimuthDeg))
                .with(coating.map(said -> said.coat).orElse(GlassCoat.NONE))
                .with(board);
    }
}
