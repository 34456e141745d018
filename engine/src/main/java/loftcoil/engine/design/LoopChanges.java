package loftcoil.engine.design;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import loftcoil.engine.fault.Allowed;
import loftcoil.engine.words.Numeral;

/** The named changes of coil and legs, the loop staying closed. */
final class LoopChanges {

    private static final String ELBOW = "elbow90";

    /** Which end of the coil the cold pipe joins. */
    private enum CoilEnd implements Coded {
        /** As it should be. */
        LOWER("the lower end"),
        /** The wrong way round. */
        UPPER("the upper end");

        private final String code;

        CoilEnd(String code) {
            this.code = code;
        }

        @Override
        public String code() {
            return code;
        }
    }

    /** What stands beside the flue, where it is warm. */
    private enum BesideFlue implements Coded {
        /** As it should be. */
        HOT_LEG("the hot leg"),
        /** The pipes have been taken for each other. */
        COLD_LEG("the cold leg");

        private final String code;

        BesideFlue(String code) {
            this.code = code;
        }

        @Override
        public String code() {
            return code;
        }

        static BesideFlue of(Design design) {
            return Stretch.coldBesideFlue(design) ? COLD_LEG : HOT_LEG;
        }
    }

    private LoopChanges() {}

    static void into(ChangeTable table) {
        coil(table);
        loop(table);
        sides(table);
        valves(table);
    }

    private static void coil(ChangeTable table) {
        table.follows("coil.inletM", LoopChanges::inletAt);
        table.fields("coil.tube", "coil.lengthM");
        table.follows(
                "coil.heatKW",
                design -> ChangeTable.shown(Numeral.typed(HeatChanges.statedOrWorkedOutKW(design))),
                (design, heatKW) -> DesignTable.set(design, "coil.heatKW", Double.toString(heatKW)));
        table.choice("coil.turns", "How the coil turns in the fire", CoilJoints.Turns.class, "coil.fittings.*")
                .as(CoilJoints::turns, CoilJoints::with);
        table.choice(
                        "coil.ends",
                        "Which end of the coil the cold pipe joins",
                        CoilEnd.class,
                        "coil.inletM",
                        "coil.outletM")
                .as(
                        design -> design.coil().riseM() >= 0 ? CoilEnd.LOWER : CoilEnd.UPPER,
                        (design, end) -> design.coil().riseM() >= 0 == (end == CoilEnd.LOWER)
                                ? design.checked()
                                : Stretch.toCoil(design, design.coil().turned()));
    }

    /** The whole coil moves. */
    private static Design inletAt(Design design, double inletM) {
        Coil coil = CoilFields.TABLE.with(
                design.coil(), CoilFields.OUTLET, inletM + design.coil().riseM());
        return Stretch.toCoil(design, CoilFields.TABLE.with(coil, CoilFields.INLET, inletM));
    }

    private static void loop(ChangeTable table) {
        table.tube("loop.tube", "Tube of every leg and the coil", "coil.tube", "coldLegs[].tube", "hotLegs[].tube")
                .as(
                        design -> design.coil().tube(),
                        (design, tube) -> design.with(
                                design.tank(),
                                CoilFields.TABLE.with(design.coil(), CoilFields.TUBE, tube),
                                each(design.coldLegs(), tubed(tube)),
                                each(design.hotLegs(), tubed(tube))));
        table.tube("legs.tube", "Tube of every leg, the coil apart", "coldLegs[].tube", "hotLegs[].tube")
                .as(design -> design.hotLegs().get(0).tube(), (design, tube) -> both(design, tubed(tube)));
        table.whole(
                        "loop.elbowsPerLeg",
                        "Sharp 90° elbows in each leg",
                        new Allowed(0, CoilFields.MOST_FITTINGS, ""),
                        "coldLegs[].fittings.*",
                        "hotLegs[].fittings.*")
                .as(
                        design -> design.hotLegs().get(0).fittings().getOrDefault(ELBOW, 0),
                        (design, elbows) -> both(
                                design,
                                leg -> LegFields.TABLE.with(
                                        leg, LegFields.FITTINGS, Counts.with(leg.fittings(), ELBOW, elbows))));
        table.number(
                        "loop.slopeMmPerM",
                        "Slope of the flattest pipe in the loop",
                        Slopes.RANGE,
                        "coldLegs[].riseM",
                        "hotLegs[].riseM")
                .as(design -> Math.rint(Slopes.leastMmPerM(design) * 10) / 10, Slopes::with);
        table.number(
                        "hotLegs.slopeMmPerM",
                        "Least slope of the hot pipe",
                        new Allowed(0, Slopes.RANGE.high(), "mm/m"),
                        "hotLegs[].riseM")
                .as(design -> Math.max(0, Math.rint(Slopes.leastHotMmPerM(design) * 10) / 10), Slopes::withHot);
        table.number(
                        "loop.laggingMm",
                        "Thickness of lagging on every leg",
                        TankChanges.LAGGING_MM,
                        "coldLegs[].lagging.thicknessMm",
                        "hotLegs[].lagging.thicknessMm")
                .as(design -> laggingMm(design.hotLegs()), (design, mm) -> both(design, lagged(mm)));
        table.named(
                        "loop.laggingMaterial",
                        "Lagging of every leg",
                        TankChanges.laggings(),
                        "coldLegs[].lagging.material",
                        "hotLegs[].lagging.material")
                .as(design -> laggingMaterial(design.hotLegs()), (design, material) -> both(design, coated(material)));
    }

    private static void sides(ChangeTable table) {
        table.tube("hotLegs.tube", "Tube of the hot legs", "hotLegs[].tube")
                .as(design -> design.hotLegs().get(0).tube(), (design, tube) -> hot(design, tubed(tube)));
        table.tube("coldLegs.tube", "Tube of the cold legs", "coldLegs[].tube")
                .as(design -> design.coldLegs().get(0).tube(), (design, tube) -> cold(design, tubed(tube)));
        table.number(
                        "hotLegs.laggingMm",
                        "Thickness of lagging on the hot legs",
                        TankChanges.LAGGING_MM,
                        "hotLegs[].lagging.thicknessMm")
                .as(design -> laggingMm(design.hotLegs()), (design, mm) -> hot(design, lagged(mm)));
        table.number(
                        "coldLegs.laggingMm",
                        "Thickness of lagging on the cold legs",
                        TankChanges.LAGGING_MM,
                        "coldLegs[].lagging.thicknessMm")
                .as(design -> laggingMm(design.coldLegs()), (design, mm) -> cold(design, lagged(mm)));
        table.named(
                        "hotLegs.laggingMaterial",
                        "Lagging of the hot legs",
                        TankChanges.laggings(),
                        "hotLegs[].lagging.material")
                .as(design -> laggingMaterial(design.hotLegs()), (design, material) -> hot(design, coated(material)));
        table.named(
                        "coldLegs.laggingMaterial",
                        "Lagging of the cold legs",
                        TankChanges.laggings(),
                        "coldLegs[].lagging.material")
                .as(design -> laggingMaterial(design.coldLegs()), (design, material) -> cold(design, coated(material)));
        table.number("hotLegs.runM", "Level run of the hot legs, seen from above", Stretch.RUN, "hotLegs[].lengthM")
                .as(
                        design -> Stretch.runM(design.hotLegs()),
                        (design, runM) -> design.with(
                                DesignTable.HOT_LEGS, Stretch.toRun("hotLegs.runM", design.hotLegs(), runM)));
        table.number("coldLegs.runM", "Level run of the cold legs, seen from above", Stretch.RUN, "coldLegs[].lengthM")
                .as(
                        design -> Stretch.runM(design.coldLegs()),
                        (design, runM) -> design.with(
                                DesignTable.COLD_LEGS, Stretch.toRun("coldLegs.runM", design.coldLegs(), runM)));
        table.number(
                        "hotLegs.aroundC",
                        "Warmth round the first hot leg while the fire burns",
                        LegFields.AROUND_RANGE,
                        "hotLegs[0].aroundC")
                .as(
                        design -> design.hotLegs().get(0).aroundC(),
                        (design, aroundC) -> DesignTable.set(
                                DesignTable.set(design, "hotLegs[0].outdoors", Form.NOT_SAID),
                                "hotLegs[0].aroundC",
                                Double.toString(aroundC)));
        table.choice(
                        "loop.besideFlue",
                        "What stands beside the flue",
                        BesideFlue.class,
                        "coldLegs[0].aroundC",
                        "hotLegs[0].aroundC")
                .as(
                        BesideFlue::of,
                        (design, leg) ->
                                BesideFlue.of(design) == leg ? design.checked() : Stretch.placesChanged(design));
    }

    private static void valves(ChangeTable table) {
        String[] fittings = {"coil.fittings.*", "coldLegs[].fittings.*", "hotLegs[].fittings.*"};
        table.whole("loop.valves", "Gate valves in the loop", new Allowed(0, 10, ""), fittings)
                .as(LoopValves::count, LoopValves::withCount);
        table.choice("loop.valveOpening", "Gate valve in the cold pipe", LoopValves.Opening.class, fittings)
                .as(LoopValves::opening, LoopValves::withOpening);
        table.choice("loop.choked", "A joint of the hot pipe", LoopValves.Joint.class, fittings)
                .as(LoopValves::joint, LoopValves::withJoint);
    }

    private static Design both(Design design, UnaryOperator<Leg> change) {
        return design.withLegs(each(design.coldLegs(), change), each(design.hotLegs(), change));
    }

    private static Design cold(Design design, UnaryOperator<Leg> change) {
        return design.with(DesignTable.COLD_LEGS, each(design.coldLegs(), change));
    }

    private static Design hot(Design design, UnaryOperator<Leg> change) {
        return design.with(DesignTable.HOT_LEGS, each(design.hotLegs(), change));
    }

    private static List<Leg> each(List<Leg> legs, UnaryOperator<Leg> change) {
        return legs.stream().map(change).toList();
    }

    private static UnaryOperator<Leg> tubed(String tube) {
        return leg -> LegFields.TABLE.with(leg, LegFields.TUBE, tube);
    }

    private static UnaryOperator<Leg> lagged(double thicknessMm) {
        return leg -> leg.withLagging(Optional.of(LaggingChoice.thick(leg.lagging(), thicknessMm)));
    }

    private static UnaryOperator<Leg> coated(String material) {
        return leg -> leg.withLagging(LaggingChoice.of(leg.lagging(), material, LegFields.BARE_LEG_GETS_MM));
    }

    private static double laggingMm(List<Leg> legs) {
        return legs.get(0).lagging().map(LaggingChoice::thicknessMm).orElse(0.0);
    }

    private static String laggingMaterial(List<Leg> legs) {
        return legs.get(0).lagging().map(LaggingChoice::material).orElse(TankChanges.BARE);
    }
}
