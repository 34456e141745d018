package loftcoil.engine.design;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import loftcoil.engine.fault.KnownNames;
import loftcoil.engine.supply.InletNeed;
import loftcoil.engine.supply.RatedFlow;
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
    static final Field<Tap, String> TUBE =
            new Field<>("tube", "Tube to the tap", CoilFields.TUBE_HELP, CoilFields.tube(), Tap::tube);
    private static final Field<Tap, Double> LENGTH = new Field<>(
            "lengthM",
            "Length of pipe to the tap",
            "From the tank, or from the end of the trunk, along the pipe.",
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
            "Velocity heads on the speed in the pipe, where no rated flow is said: 4 to 10 for a full-way valve as wide as the pipe;"
                    + " a tap with a rated flow counts 30 and more.",
            Leaf.number(0, MOST_OUTLET_K, FieldUnit.PLAIN),
            Tap::outletK);
    static final Field<Tap, OptionalDouble> RATED_FLOW = new Field<>(
            "ratedLPerMin",
            "Rated flow of the tap",
            "Fully open, at the rated pressure before it, as its papers or its flow class say; it goes before outletK.",
            Said.number(Leaf.number(RatedFlow.FLOW.low(), RatedFlow.FLOW.high(), FieldUnit.L_PER_MIN), "outletK holds"),
            Tap::ratedLPerMin);
    static final Field<Tap, OptionalDouble> RATED_PRESSURE = new Field<>(
            "ratedKPa",
            "Pressure of the rated flow",
            "10 for taps for low pressure (0.1 bar), 300 for flow classes of mains taps (3 bar).",
            Said.number(
                    Leaf.number(RatedFlow.PRESSURE.low(), RatedFlow.PRESSURE.high(), FieldUnit.KPA),
                    "300 kPa, as flow classes are given"),
            Tap::ratedKPa);
    static final Field<Tap, OptionalDouble> MIXER = new Field<>(
            "mixerC",
            "Hottest water past the mixing valve",
            "What a thermostatic mixing valve before the tap is set to.",
            Said.number(Leaf.number(20, 70, FieldUnit.C), "no mixing valve: as hot as the tank"),
            Tap::mixerC);
    private static final Field<Tap, OptionalDouble> MIXER_FLOW = new Field<>(
            "mixerLPerMin",
            "Rated flow of the mixing valve",
            "What it passes, hot and cold together, at its rated loss.",
            Said.number(
                    Leaf.number(RatedFlow.FLOW.low(), RatedFlow.FLOW.high(), FieldUnit.L_PER_MIN),
                    "7.5 L/min, where there is a valve"),
            Tap::mixerLPerMin);
    private static final Field<Tap, OptionalDouble> MIXER_PRESSURE = new Field<>(
            "mixerKPa",
            "Pressure lost in the mixing valve",
            "At its rated flow: 10 for a valve for low pressure; 100 where its papers give a Kv in litres a minute at 1 bar.",
            Said.number(
                    Leaf.number(RatedFlow.PRESSURE.low(), RatedFlow.PRESSURE.high(), FieldUnit.KPA),
                    "10 kPa, where there is a valve"),
            Tap::mixerKPa);
    private static final Field<Tap, Optional<Boolean>> ON_TRUNK = new Field<>(
            "onTrunk",
            "Pipe leaves the trunk",
            "Whether this tap hangs on the pipe that several share, or on one of its own from the tank.",
            Said.of(Leaf.flag(), "true where the design has a trunk"),
            Tap::onTrunk);
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
            List.of(
                    NAME,
                    LEVEL,
                    TUBE,
                    LENGTH,
                    FITTINGS,
                    OUTLET_K,
                    RATED_FLOW,
                    RATED_PRESSURE,
                    MIXER,
                    MIXER_FLOW,
                    MIXER_PRESSURE,
                    ON_TRUNK,
                    APPLIANCE),
            of -> new Tap(
                    of.of(NAME),
                    of.of(LEVEL),
                    of.of(TUBE),
                    of.of(LENGTH),
                    of.of(FITTINGS),
                    of.of(OUTLET_K),
                    of.of(RATED_FLOW),
                    of.of(RATED_PRESSURE),
                    of.of(MIXER),
                    of.of(MIXER_FLOW),
                    of.of(MIXER_PRESSURE),
                    of.of(ON_TRUNK),
                    of.of(APPLIANCE)));

    static final Form<List<Tap>> LIST = new Parts<>(TABLE, Optional.empty(), false);

    private static final Field<Use, Double> AT = new Field<>(
            "atH", "Hour of the draw", "By the clock, every day.", Leaf.number(0, 24, FieldUnit.CLOCK), Use::atH);
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

    private static final Field<Trunk, String> TRUNK_TUBE =
            new Field<>("tube", "Tube of the trunk", CoilFields.TUBE_HELP, CoilFields.tube(), Trunk::tube);
    private static final Field<Trunk, Double> TRUNK_LENGTH = new Field<>(
            "lengthM",
            "Length of the trunk",
            "From the tank to where the pipes of the taps part.",
            Leaf.number(0.01, 200, FieldUnit.M),
            Trunk::lengthM);
    private static final Field<Trunk, Map<String, Integer>> TRUNK_FITTINGS = new Field<>(
            "fittings",
            "Fittings of the trunk",
            "How many of each kind, by a key of the fitting table; the tees at its end stand with the taps.",
            CoilFields.fittings(),
            Trunk::fittings);

    static final Table<Trunk> TRUNK_TABLE = new Table<>(
            List.of(TRUNK_TUBE, TRUNK_LENGTH, TRUNK_FITTINGS),
            of -> new Trunk(of.of(TRUNK_TUBE), of.of(TRUNK_LENGTH), of.of(TRUNK_FITTINGS)));

    private TapFields() {}

    /** The taps; where there are none, the one they are started with: a sink on 4 m of 22 mm tube with five elbows. */
    static List<Tap> orStarted(Design design) {
        Tap sink = new Tap("kitchen sink", 1.05, "EN1057 22x0.9", 4, Map.of("elbow90", 5), 6);
        return design.taps().isEmpty() ? List.of(sink) : design.taps();
    }
}
