package loftcoil.engine.design;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import loftcoil.engine.fault.KnownNames;
import loftcoil.engine.supply.InletNeed;
import loftcoil.engine.use.DrawOff;

/** The fields of {@link Tap} and of {@link Use}. */
final class TapFields {

    /** The greatest loss a tap can have on the speed in its pipe. */
    static final double MOST_OUTLET_K = 1000;

    static final Field<Tap, String> NAME =
            new Field<>("name", "Name of the tap", "What you call it; no two taps alike.", Leaf.name(), Tap::name);
    private static final Field<Tap, Double> LEVEL = new Field<>(
            "levelM",
            "Outlet above the floor",
            "Where the water leaves the tap.",
            Leaf.number(-10, 15, FieldUnit.M),
            Tap::levelM);
    static final Field<Tap, String> TUBE = new Field<>(
            "tube", "Tube to the tap", "A name of the tube table, standard and size.", CoilFields.tube(), Tap::tube);
    private static final Field<Tap, Double> LENGTH = new Field<>(
            "lengthM",
            "Length of pipe to the tap",
            "From the tank, along the pipe.",
            Leaf.number(0.01, 200, FieldUnit.M),
            Tap::lengthM);
    static final Field<Tap, Map<String, Integer>> FITTINGS = new Field<>(
            "fittings",
            "Fittings on the way to the tap",
            "How many of each kind, by a key of the fitting table.",
            CoilFields.fittings(),
            Tap::fittings);
    static final Field<Tap, Double> OUTLET_K = new Field<>(
            "outletK",
            "Loss of the open tap",
            "Velocity heads on the speed in the pipe: 4 for a wide tub tap, 6 for a sink, 10 for a hose valve.",
            Leaf.number(0, MOST_OUTLET_K, FieldUnit.PLAIN),
            Tap::outletK);
    static final Field<Tap, OptionalDouble> MIXER = new Field<>(
            "mixerC",
            "Hottest water past the mixing valve",
            "What a thermostatic mixing valve before the tap is set to.",
            Said.number(Leaf.number(20, 70, FieldUnit.C), "no mixing valve: as hot as the tank"),
            Tap::mixerC);
    private static final Field<Tap, Optional<String>> APPLIANCE = new Field<>(
            "appliance",
            "Appliance on the tap",
            "One whose inlet asks for a least head, by its name in the table of inlets.",
            Said.of(
                    Leaf.known(new KnownNames(
                            "appliance",
                            InletNeed.all().stream().map(InletNeed::name).toList())),
                    "none: somebody holds a bucket under it"),
            Tap::appliance);

    static final Table<Tap> TABLE = new Table<>(
            List.of(NAME, LEVEL, TUBE, LENGTH, FITTINGS, OUTLET_K, MIXER, APPLIANCE),
            of -> new Tap(
                    of.of(NAME),
                    of.of(LEVEL),
                    of.of(TUBE),
                    of.of(LENGTH),
                    of.of(FITTINGS),
                    of.of(OUTLET_K),
                    of.of(MIXER),
                    of.of(APPLIANCE)));

    static final Form<List<Tap>> LIST = new Parts<>(TABLE, Optional.empty(), false);

    private static final Field<Use, Double> AT = new Field<>(
            "atH", "Hour of the draw", "By the clock, every day.", Leaf.number(0, 24, FieldUnit.H), Use::atH);
    private static final Field<Use, Double> LITRES = new Field<>(
            "litres",
            "Mixed water drawn",
            "Hot and cold together, as it leaves the tap.",
            Leaf.number(DrawOff.LITRES.low(), DrawOff.LITRES.high(), FieldUnit.L),
            Use::litres);
    private static final Field<Use, Double> MIXED = new Field<>(
            "mixedC",
            "Temperature of the mixed water",
            "40 °C for a body, 45 °C for dishes.",
            Leaf.number(5, 90, FieldUnit.C),
            Use::mixedC);
    static final Field<Use, String> TAP = new Field<>(
            "tap", "Tap it is drawn from", "By the name the tap has in this design.", Leaf.nameOf("a tap"), Use::tap);

    static final Table<Use> USE_TABLE = new Table<>(
            List.of(AT, LITRES, MIXED, TAP), of -> new Use(of.of(AT), of.of(LITRES), of.of(MIXED), of.of(TAP)));

    static final Form<List<Use>> USE_LIST = new Parts<>(USE_TABLE, Optional.empty(), false);

    private TapFields() {}

    /** The taps; where there are none, the one they are started with: a sink on 4 m of 22 mm tube with five elbows. */
    static List<Tap> orStarted(Design design) {
        Tap sink = new Tap(
                "kitchen sink",
                1.05,
                "EN1057 22x0.9",
                4,
                Map.of("elbow90", 5),
                6,
                OptionalDouble.empty(),
                Optional.empty());
        return design.taps().isEmpty() ? List.of(sink) : design.taps();
    }
}
