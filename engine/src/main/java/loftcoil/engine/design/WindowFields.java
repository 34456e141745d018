package loftcoil.engine.design;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import loftcoil.engine.tank.SeenFace;

/** The fields of {@link Window} and of the board over it. */
final class WindowFields {

    /** A board that is put over panes: 40 mm of foam, shut from 18:00 for fourteen hours. */
    static final ShutterChoice NEW_BOARD = new ShutterChoice(1.1, 18, 14);

    private static final Field<ShutterChoice, Double> RESISTANCE = new Field<>(
            "resistanceM2KPerW",
            "Thermal resistance of the board",
            "40 mm of foam board has about 1.1.",
            Leaf.number(0, 5, "m² K/W"),
            ShutterChoice::resistanceM2KPerW);
    private static final Field<ShutterChoice, Double> SHUT_FROM = new Field<>(
            "shutFromH",
            "Hour at which the board is shut",
            "On a usual day, by the clock.",
            Leaf.number(0, 24, FieldUnit.CLOCK),
            ShutterChoice::shutFromH);
    private static final Field<ShutterChoice, Double> SHUT_FOR = new Field<>(
            "shutForH",
            "Hours the board stays shut",
            "Till somebody opens it in the morning.",
            Leaf.number(0, 24, FieldUnit.H),
            ShutterChoice::shutForH);
    private static final Table<ShutterChoice> SHUTTER_TABLE = new Table<>(
            List.of(RESISTANCE, SHUT_FROM, SHUT_FOR),
            of -> new ShutterChoice(of.of(RESISTANCE), of.of(SHUT_FROM), of.of(SHUT_FOR)));

    static final Field<Window, Integer> PANES = new Field<>(
            "panes",
            "Number of panes",
            "One behind the other, with air between.",
            Leaf.whole(1, 4, FieldUnit.COUNT),
            Window::panes);
    private static final Field<Window, Double> AREA = new Field<>(
            "areaM2",
            "Area of glass that lets sun in",
            "Without frames and bars.",
            Leaf.number(0.05, 20, FieldUnit.M2),
            Window::areaM2);
    private static final Field<Window, Double> TILT = new Field<>(
            "tiltDeg",
            "Tilt of the panes from the level",
            "0 lies flat, 90 stands upright.",
            Leaf.number(0, 90, FieldUnit.DEGREES),
            Window::tiltDeg);
    private static final Field<Window, Double> AZIMUTH = new Field<>(
            "azimuthDeg",
            "Direction the panes face, clockwise from north",
            "East is 90, south 180, west 270; true north, not the compass's.",
            Leaf.number(0, 360, FieldUnit.DEGREES),
            Window::azimuthDeg);
    private static final Field<Window, Double> GAP = new Field<>(
            "gapMm",
            "Gap between panes",
            "From glass to glass, and from the last one to the tank's front.",
            Leaf.number(3, 60, FieldUnit.MM),
            Window::gapMm);
    private static final Field<Window, Double> ABSORPTANCE = new Field<>(
            "absorptance",
            "Share of the sun the dark tank takes up",
            "Matt black paint has about 0.92.",
            Leaf.number(0, 1, FieldUnit.PLAIN),
            Window::absorptance);
    static final Field<Window, Optional<ShutterChoice>> SHUTTER = new Field<>(
            "shutter",
            "Board over the panes at night",
            "Left out: there is none.",
            Part.started(SHUTTER_TABLE, design -> NEW_BOARD),
            Window::shutter);

    private static final Field<Window, OptionalDouble> REFLECTOR = new Field<>(
            "reflectorShare",
            "Share of the sun beside the tank that reflectors bring to it",
            "Clean bright sheet bent round the tank brings about 0.7, flat white boards about 0.3 (common practice, no source).",
            Said.number(Leaf.number(0, SeenFace.REFLECTED.high(), FieldUnit.PLAIN), "no reflectors: 0"),
            Window::reflectorShare);

    static final Field<Window, Optional<Window.Coating>> COATING = new Field<>(
            "coating",
            "Coating of the sealed unit next to the tank",
            "Hold a lighter before the glass: where a face is coated, one image of the flame has another colour. Units up to about"
                    + " 1995 mostly have a hard coat, later ones a soft one.",
            Said.of(Leaf.code("coating", Window.Coating.class, Window.Coating.HARD), "plain glass"),
            Window::coating);
    private static final Field<Window, Optional<Integer>> TOUGHENED = new Field<>(
            "toughened",
            "Panes of toughened glass, counted from the tank",
            "A stamp in a corner tells it. Plain, wired and laminated glass cracks before a hot tank.",
            Said.of(Leaf.whole(0, 4, FieldUnit.COUNT), "none"),
            Window::toughened);

    static final Table<Window> TABLE = new Table<>(
            List.of(PANES, AREA, TILT, AZIMUTH, GAP, ABSORPTANCE, SHUTTER, REFLECTOR, COATING, TOUGHENED),
            of -> new Window(
                    of.of(PANES),
                    of.of(AREA),
                    of.of(TILT),
                    of.of(AZIMUTH),
                    of.of(GAP),
                    of.of(ABSORPTANCE),
                    of.of(SHUTTER),
                    of.of(REFLECTOR),
                    of.of(COATING),
                    of.of(TOUGHENED)));

    static final Form<Optional<Window>> FORM = Part.started(TABLE, WindowFields::orStarted);

    private WindowFields() {}

    /**
     * The panes; where there are none, those they are started with: two panes as large as what they see of the tank, 1 m² at most,
     * 12 mm apart, tilted 35° to the noon sun, before a tank that takes up 0.92 of the sun.
     */
    static Window orStarted(Design design) {
        double noonSunDeg = design.site().latitudeDeg() >= 0 ? 180 : 0;
        double seenM2 = design.tank().shape().seenFrom(35).outlineM2();
        double areaM2 = Math.max(0.05, Math.min(1, Math.rint(seenM2 * 100) / 100));
        return design.window().orElse(new Window(2, areaM2, 35, noonSunDeg, 12, 0.92, Optional.empty()));
    }
}
