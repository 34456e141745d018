package loftcoil.engine.design;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import loftcoil.engine.pipe.TubeTable;

/** The fields of {@link Coil}. */
final class CoilFields {

    /** No pipe has more fittings of one kind than this. */
    static final int MOST_FITTINGS = 50;

    /** What every tube field says of its names. */
    static final String TUBE_HELP =
            "A name of the tube table, standard and size; or outer diameter x wall in mm and the metal, as 22x1.5 stainless, 22x1.5"
                    + " steel or 35x1.1 copper; without a metal, as 35x1.0, hard copper is assumed.";

    static final Field<Coil, String> TUBE = new Field<>("tube", "Tube of the coil", TUBE_HELP, tube(), Coil::tube);
    static final Field<Coil, Double> LENGTH = new Field<>(
            "lengthM",
            "Length of tube in the coil",
            "All of it that is in flame or hot gas; no less than the difference of its levels.",
            Leaf.number(0.1, 50, FieldUnit.M),
            Coil::lengthM);
    static final Field<Coil, Double> INLET = new Field<>(
            "inletM",
            "Coil inlet above the floor",
            "Level at which the cold pipe joins the coil.",
            Leaf.number(-10, 15, FieldUnit.M),
            Coil::inletM);
    static final Field<Coil, Double> OUTLET = new Field<>(
            "outletM",
            "Coil outlet above the floor",
            "Level at which the hot pipe leaves the coil.",
            Leaf.number(-10, 15, FieldUnit.M),
            Coil::outletM);
    static final Field<Coil, Map<String, Integer>> FITTINGS = new Field<>(
            "fittings",
            "Fittings in the coil",
            "How many of each kind, by a key of the fitting table.",
            fittings(),
            Coil::fittings);
    private static final Field<Coil, OptionalDouble> WINDING = new Field<>(
            "windingMm",
            "Diameter of the coil's winding",
            "Where the tube is wound like a spring: from middle of tube to middle; at least three times its outer diameter.",
            Said.number(Leaf.number(50, 2000, FieldUnit.MM), "not wound: straight, bent or with fittings"),
            Coil::windingMm);
    private static final Field<Coil, OptionalDouble> SOOT = new Field<>(
            "sootMm",
            "Soot and ash on the coil",
            "As thick as it mostly is between two sweepings.",
            Said.number(Leaf.number(0, 10, FieldUnit.MM), "0.5 mm; 0.2 mm after sweeping, 1.5 mm neglected"),
            Coil::sootMm);
    static final Field<Coil, OptionalDouble> HEAT = new Field<>(
            "heatKW",
            "Heat the coil gives the water",
            "Only where it was measured or is asked for; it goes before what the fire would give.",
            Said.number(Leaf.number(0, 50, FieldUnit.KW), "worked out from the fire, to some 40 %"),
            Coil::heatKW);

    static final Table<Coil> TABLE = new Table<>(
            List.of(TUBE, LENGTH, INLET, OUTLET, FITTINGS, WINDING, SOOT, HEAT),
            of -> new Coil(
                    of.of(TUBE),
                    of.of(LENGTH),
                    of.of(INLET),
                    of.of(OUTLET),
                    of.of(FITTINGS),
                    of.of(WINDING),
                    of.of(SOOT),
                    of.of(HEAT)));

    private CoilFields() {}

    /** A tube, by its name in the tube table. */
    static Leaf<String> tube() {
        return Leaf.known(name -> TubeTable.find(name).isPresent(), TubeTable.names(), TubeTable::unknown);
    }

    /** Fittings by the keys of the fitting table. */
    static Form<Map<String, Integer>> fittings() {
        return new Counts(Leaf.whole(0, MOST_FITTINGS, FieldUnit.COUNT));
    }
}
