package loftcoil.engine.design;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The fields of {@link Design}, and with them all others. */
final class DesignTable {

    private static final Field<Design, String> NAME =
            new Field<>("name", "Name of the design", "What you call it.", Leaf.name(), Design::name);
    private static final Field<Design, Site> SITE =
            new Field<>("site", "Site", "Where it stands.", SiteFields.TABLE, Design::site);
    static final Field<Design, Tank> TANK = new Field<>("tank", "Tank", "", TankFields.TABLE, Design::tank);
    static final Field<Design, Coil> COIL = new Field<>("coil", "Coil", "", CoilFields.TABLE, Design::coil);
    static final Field<Design, Optional<Fire>> FIRE =
            new Field<>("fire", "Fire", "Left out: not described.", FireFields.FORM, Design::fire);
    static final Field<Design, List<Leg>> COLD_LEGS = new Field<>(
            "coldLegs", "Cold legs", "From the tank's cold port to the coil.", LegFields.LIST, Design::coldLegs);
    static final Field<Design, List<Leg>> HOT_LEGS = new Field<>(
            "hotLegs", "Hot legs", "From the coil to the tank's return port.", LegFields.LIST, Design::hotLegs);
    static final Field<Design, Optional<Window>> WINDOW =
            new Field<>("window", "Panes", "Left out: there are none.", WindowFields.FORM, Design::window);
    static final Field<Design, List<Tap>> TAPS =
            new Field<>("taps", "Taps", "May be none.", TapFields.LIST, Design::taps);
    static final Field<Design, Optional<Trunk>> TRUNK = new Field<>(
            "trunk",
            "Pipe that taps share",
            "Left out: each tap has a pipe of its own from the tank.",
            Part.toldWhole(TapFields.TRUNK_TABLE),
            Design::trunk);
    static final Field<Design, List<Use>> USE =
            new Field<>("use", "Draws", "What is drawn each day; may be none.", TapFields.USE_LIST, Design::use);
    static final Field<Design, Optional<Safety>> SAFETY = new Field<>(
            "safety",
            "Safety",
            "What is said about the things that can hurt somebody.",
            Part.started(SafetyFields.TABLE, design -> Safety.UNSAID),
            Design::safety);

    static final Table<Design> TABLE = new Table<>(
            List.of(NAME, SITE, TANK, COIL, FIRE, COLD_LEGS, HOT_LEGS, WINDOW, TAPS, TRUNK, USE, SAFETY),
            of -> new Design(
                    of.of(NAME),
                    of.of(SITE),
                    of.of(TANK),
                    of.of(COIL),
                    of.of(FIRE),
                    of.of(COLD_LEGS),
                    of.of(HOT_LEGS),
                    of.of(WINDOW),
                    of.of(TAPS),
                    of.of(TRUNK),
                    of.of(USE),
                    of.of(SAFETY),
                    Map.of(),
                    Map.of()));

    private DesignTable() {}

    /** A design gone on with another's change, field by field; lists are taken whole. */
    static Design merged(Design base, Design ours, Design theirs) {
        return TABLE.merged(base, ours, theirs).noted(ours.notes(), ours.origins());
    }

    /** The design with one part changed, not yet checked. */
    static <V> Design with(Design design, Field<Design, V> field, V value) {
        return TABLE.with(design, field, value).noted(design.notes(), design.origins());
    }

    /** The design with the text in the place of a path, checked. */
    static Design set(Design design, String path, String text) {
        return unchecked(design, path, text).checked();
    }

    /** The same, not yet checked. */
    static Design unchecked(Design design, String path, String text) {
        return TABLE.set(Target.of(design, path, text), design).noted(design.notes(), design.origins());
    }

    /** The same for one of several fields that are told together. */
    static Design sketched(Design design, String path, String text) {
        return TABLE.set(Target.of(design, path, text).inSketch(), design).noted(design.notes(), design.origins());
    }

    /** The text at a path; where the design lacks that part, of what it is started with. */
    static String get(Design design, String path) {
        return TABLE.get(Target.of(design, path, ""), design);
    }
}
