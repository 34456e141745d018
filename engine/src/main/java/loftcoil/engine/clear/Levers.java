package loftcoil.engine.clear;

import static loftcoil.engine.caution.CautionKind.*;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import loftcoil.engine.caution.CautionKind;
import loftcoil.engine.design.Changes;
import loftcoil.engine.design.CoilHeating;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.DesignFields;
import loftcoil.engine.design.Fire;
import loftcoil.engine.design.LaggingChoice;
import loftcoil.engine.design.Leg;
import loftcoil.engine.design.Outdoors;
import loftcoil.engine.design.Tap;
import loftcoil.engine.design.Window;
import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.pipe.TubeTable;
import loftcoil.engine.study.NamedValue;
import loftcoil.engine.words.Measure;
import loftcoil.engine.words.MeasureKind;
import loftcoil.engine.words.Numeral;

/**
 * The levers: what of a design may be changed for which dangers. What is stated of the world (heat, climate, hardness, site, draws, what
 * a structure may carry) is none, and a coil's heat by itself never: the coil's length is, and the heat follows it. Why each costs what it
 * costs stands in {@code models/clear.md}.
 */
final class Levers {

    /** Dangers of a loop that carries too little heat away. */
    private static final Set<CautionKind> FLOW = EnumSet.of(BOIL, BOIL_NEAR, BOIL_HARD, STILL, START);

    /** Dangers of a tank that comes too near boiling. */
    private static final Set<CautionKind> HOT_TANK = EnumSet.of(BOIL_TANK, BOIL_HARD, START);

    private static final Set<CautionKind> HEAVY = EnumSet.of(ROOF_LOAD, TIP, AXLE);

    private static final double MIXED_C = 45;

    /** Setting of a mixing valve that neither children nor the frail are scalded by, as {@code taps.mixer} names it. */
    private static final String MIXED = "set to 45 °C";

    private static final double STEP_M = 0.05;

    private static final double HALF_HOUR = 0.5;

    private static final double RADIATOR_KW = 0.25;
    private static final double MOST_RADIATOR_KW = 4;
    private static final double RADIATOR_FROM_C = 3;

    /** Slope of a pipe that nobody would call level. */
    private static final int NO_LEVEL_MM_PER_M = 50;

    /** Lagging of a loop built anew, mm: a bare hot pipe cools in a quarter of an hour and starts badly. */
    private static final int LAGGED_MM = 25;

    private static final String SMALLER_COIL = "coil-smaller";
    private static final double SHORTER_M = 0.1;
    private static final double USUAL_INLET_C = 40;

    /** Where nothing else that is built is enough, this is tried, alone and with others: it takes from the baths what the fire would give. */
    static boolean isLastResort(Lever lever) {
        return lever.code().equals(SMALLER_COIL);
    }

    /** Those of which one that cools and one that lets flow together go furthest. */
    static final Set<String> STRONG =
            Set.of("radiator", "tank-larger", "leg-tubes", "loop-tube", "coil-higher", "loop-anew", "loop-anew-high");

    /** What stands beside the last resort, one lever or two together: the strongest that cools, the strongest that lets flow, both. */
    static List<List<Lever>> strongest() {
        Lever cool = lever("radiator");
        Lever flow = lever("loop-anew-high");
        return List.of(List.of(cool), List.of(flow), List.of(cool, flow), List.of(lever("tank-larger"), flow));
    }

    /** Whether a lever keeps the tank cooler, rather than the loop flowing better. */
    static boolean cools(Lever lever) {
        return lever.clears().contains(BOIL_TANK);
    }

    /** Whether a danger is one of a loop that carries too little heat away. */
    static boolean isOfFlow(CautionKind danger) {
        return FLOW.contains(danger);
    }

    /** All levers, in the order of the page of models. */
    static final List<Lever> ALL = List.of(
            built(
                    "no-valve",
                    EnumSet.of(VALVE, STILL, START, BOIL, BOIL_HARD),
                    1,
                    0,
                    Steps.without(
                            "no-valve", "(coil|coldLegs\\[\\d+]|hotLegs\\[\\d+])", "gate.*|ball|check.*|globe|choked")),
            built(
                    "coil-ends",
                    EnumSet.of(AIR, STILL, START, BOIL, TANK_LOW),
                    1,
                    0,
                    design -> design.coil().riseM() < 0
                            ? Steps.to("coil-ends", "coil.ends", "the lower end")
                                    .of(design)
                            : List.of()),
            built("mixer", EnumSet.of(SCALD), 2, 0, Levers::mixed),
            built(
                    "slope",
                    EnumSet.of(AIR, SIPHON, START, STILL),
                    2,
                    0.5,
                    design -> List.of(slope(20), slope(30), slope(50))),
            built(
                    "swept",
                    union(FLOW),
                    3,
                    0,
                    design -> Steps.without("swept", "(coldLegs|hotLegs)\\[\\d+]", "elbow90").of(design).stream()
                            .map(step -> new Lever.Step(bent(design, step), step.words()))
                            .toList()),
            built(
                    "coil-bent",
                    EnumSet.of(COIL_JOINT),
                    4,
                    0,
                    Steps.to("coil-bent", "coil.turns", "bent from one length")),
            built(
                    "beside-flue",
                    union(FLOW),
                    4,
                    0,
                    design -> warmCold(design)
                            ? Steps.to("beside-flue", "loop.besideFlue", "the hot leg")
                                    .of(design)
                            : List.of()),
            built("cold-tube", union(FLOW), 3, 1, Steps.wider("cold-tube", "coldLegs.tube", Levers::narrowCold, false)),
            built("hot-tube", union(FLOW), 3, 1, Steps.wider("hot-tube", "hotLegs.tube", Levers::narrowHot, false)),
            built("leg-tubes", union(FLOW), 5, 2, Steps.wider("leg-tubes", "legs.tube", Levers::narrowLeg, false)),
            built("loop-tube", union(FLOW), 8, 2, Steps.wider("loop-tube", "loop.tube", Levers::narrowLeg, true)),
            built(
                    "coil-higher",
                    union(FLOW, AIR),
                    4,
                    0.2,
                    new Steps.Grid("coil-higher", MeasureKind.LENGTH_M, STEP_M, 12)
                            .of("coil.outletM", design -> design.coil().outletM())),
            built("coil-shorter", union(FLOW, BOIL_TANK, CREOSOTE), 4, 0.1, Levers::shorterCoil),
            built(
                    "tank-higher",
                    union(FLOW, TANK_LOW),
                    5,
                    0.5,
                    new Steps.Grid("tank-higher", MeasureKind.LENGTH_M, STEP_M, 30)
                            .of("tank.baseM", design -> design.tank().baseM())),
            built(
                    "tank-larger",
                    HOT_TANK,
                    8,
                    0.2,
                    new Steps.Grid("tank-larger", MeasureKind.VOLUME_L, 10, 40, true)
                            .of("tank.volumeL", design -> design.tank().volumeL())),
            built(
                    "tank-smaller",
                    HEAVY,
                    8,
                    0.2,
                    new Steps.Grid("tank-smaller", MeasureKind.VOLUME_L, -10, 30, true)
                            .of("tank.volumeL", design -> design.tank().volumeL())),
            built("radiator", HOT_TANK, 6, 0.3, Levers::radiator),
            built("loop-anew", union(FLOW, AIR), 12, 1.5, anew("loop-anew", 0.3)),
            built("loop-anew-high", union(FLOW, AIR), 13, 1.5, anew("loop-anew-high", 0.5)),
            built("panes-smaller", HOT_TANK, 1, 0.1, Levers::smallerPanes),
            built("tank-cooler", HOT_TANK, 9, 1, Levers::thinnerCoat),
            built(SMALLER_COIL, union(HOT_TANK, BOIL, BOIL_NEAR, STILL), 14, 0.5, Levers::smallerCoil),
            built(
                    "waterline-higher",
                    EnumSet.of(DRY_COVER, SIPHON),
                    1,
                    0.1,
                    new Steps.Grid("waterline-higher", MeasureKind.LENGTH_M, 0.01, 30)
                            .of("tank.waterlineM", design -> design.tank().waterlineM())),
            built(
                    "return-lower",
                    EnumSet.of(DRY_COVER, DRY_DRAW),
                    3,
                    0.2,
                    new Steps.Grid("return-lower", MeasureKind.LENGTH_M, -STEP_M, 20)
                            .of("tank.returnPortM", design -> design.tank().returnPortM())),
            built(
                    "draw-higher",
                    EnumSet.of(DRY_DRAW),
                    3,
                    0.2,
                    new Steps.Grid("draw-higher", MeasureKind.LENGTH_M, STEP_M, 20)
                            .of("tank.drawPortM", design -> design.tank().drawPortM())),
            built("vent-open", EnumSet.of(SEALED, VENT_NONE), 3, 0, Steps.to("vent-open", "vent.kind", "open pipe")),
            built("vent-clear", EnumSet.of(VENT_VALVE), 1, 0, Steps.to("vent-clear", "safety.vent.valve", "false")),
            built(
                    "vent-wider",
                    EnumSet.of(VENT_BORE),
                    3,
                    1,
                    design -> Steps.text(design, "safety.vent.tube").isPresent()
                            ? Steps.wider(
                                            "vent-wider",
                                            "safety.vent.tube",
                                            of -> Steps.text(of, "safety.vent.tube")
                                                    .orElseThrow(),
                                            false)
                                    .of(design)
                            : List.of()),
            built(
                    "vent-higher",
                    EnumSet.of(VENT_LOW),
                    1,
                    0.1,
                    new Steps.Grid("vent-higher", MeasureKind.LENGTH_M, STEP_M, 40)
                            .from(
                                    "safety.vent.aboveWaterlineM",
                                    design -> Steps.value(design, "safety.vent.aboveWaterlineM"))),
            built("feed-clear", EnumSet.of(FEED_VALVE), 1, 0, Steps.to("feed-clear", "safety.coldFeed.valve", "false")),
            built(
                    "no-antifreeze",
                    EnumSet.of(ANTIFREEZE),
                    1,
                    0,
                    Steps.to("no-antifreeze", "safety.antifreeze", "false")),
            built("led-indoors", EnumSet.of(FROST_LOOP), 4, 0, Levers::indoors),
            built(
                    "metal-tank",
                    EnumSet.of(PLASTIC),
                    10,
                    0,
                    Steps.instead("metal-tank", "safety.materials.tank", List.of("plastic"), "stainless steel")),
            built(
                    "metal-cistern",
                    EnumSet.of(PLASTIC),
                    5,
                    0,
                    Steps.instead("metal-cistern", "safety.coldFeed.plasticCistern", List.of("true"), "false")),
            built("copper-pipe", EnumSet.of(PLASTIC), 3, 0, Levers::copper),
            built("bearers", EnumSet.of(ROOF_BEARERS), 3, 0, Steps.to("bearers", "safety.structure.bearers", "2")),
            built(
                    "flue-away",
                    EnumSet.of(FLUE_NEAR),
                    3,
                    0.1,
                    new Steps.Grid("flue-away", MeasureKind.SMALL_LENGTH_MM, 50, 20)
                            .from(
                                    "safety.flue.flueToCombustibleMm",
                                    design -> Steps.value(design, "safety.flue.flueToCombustibleMm"))),
            built(
                    "heater-away",
                    EnumSet.of(HEATER_NEAR),
                    3,
                    0.1,
                    new Steps.Grid("heater-away", MeasureKind.SMALL_LENGTH_MM, 50, 20)
                            .from(
                                    "safety.flue.heaterToCombustibleMm",
                                    design -> Steps.value(design, "safety.flue.heaterToCombustibleMm"))),
            built(
                    "flue-lagged",
                    EnumSet.of(CREOSOTE),
                    6,
                    0,
                    Steps.instead("flue-lagged", "safety.flue.insulated", List.of("false"), "true")),
            built(
                    "alarm",
                    EnumSet.of(CO_ALARM),
                    1,
                    0,
                    Steps.to("alarm", "safety.fireRoom.carbonMonoxideAlarm", "true")),
            built(
                    "more-air",
                    EnumSet.of(CO_AIR),
                    1,
                    0.1,
                    new Steps.Grid("more-air", MeasureKind.SMALL_AREA_CM2, 10, 40)
                            .from(
                                    "safety.fireRoom.airOpeningCm2",
                                    design -> Steps.value(design, "safety.fireRoom.airOpeningCm2"))),
            built("no-fan", EnumSet.of(CO_FAN), 1, 0, Steps.to("no-fan", "safety.fireRoom.extractFan", "false")),
            conduct("shorter-fire", HOT_TANK, Levers::shorterFire),
            conduct("drained", EnumSet.of(FROST_EMPTY), Steps.to("drained", "absence.drained", "drained")));

    private Levers() {}

    private static Lever built(
            String code, Set<CautionKind> clears, double cost, double costAStep, Lever.Ladder steps) {
        return new Lever(code, clears, cost, costAStep, false, steps);
    }

    private static Lever conduct(String code, Set<CautionKind> clears, Lever.Ladder steps) {
        return new Lever(code, clears, 0, 1, true, steps);
    }

    private static Set<CautionKind> union(Set<CautionKind> all, CautionKind... others) {
        Set<CautionKind> kinds = EnumSet.copyOf(all);
        kinds.addAll(List.of(others));
        return kinds;
    }

    /** A mixing valve at each tap that people use: by its own field where there is one such tap, else by the change of all. */
    private static List<Lever.Step> mixed(Design design) {
        List<Integer> hot = new ArrayList<>();
        for (int i = 0; i < design.taps().size(); i++) {
            Tap tap = design.taps().get(i);
            if (tap.appliance().isEmpty() && !(tap.mixerC().orElse(100) <= MIXED_C)) {
                hot.add(i);
            }
        }
        if (hot.isEmpty()) {
            return List.of();
        }
        String names =
                hot.stream().map(i -> "'" + design.taps().get(i).name() + "'").collect(Collectors.joining(", "));
        NamedValue change = hot.size() == 1
                ? new NamedValue("taps[" + hot.get(0) + "].mixerC", Integer.toString((int) MIXED_C))
                : new NamedValue("taps.mixer", MIXED);
        return List.of(new Lever.Step(List.of(change), Steps.SENTENCES.say("mixer", "taps", names)));
    }

    private static Lever.Step slope(int mmPerM) {
        return new Lever.Step(
                List.of(new NamedValue("loop.slopeMmPerM", Integer.toString(mmPerM))),
                Steps.SENTENCES.say("slope", "to", new Measure(mmPerM, MeasureKind.SLOPE_MM_PER_M)));
    }

    /** Each elbow that is taken out comes back as a swept bend of its own leg. */
    private static List<NamedValue> bent(Design design, Lever.Step step) {
        List<NamedValue> changes = new ArrayList<>(step.changes());
        for (NamedValue out : step.changes()) {
            String bend = out.name().replace("elbow90", "bend90");
            double bends = Steps.value(design, out.name()).orElse(0)
                    + Steps.value(design, bend).orElse(0);
            changes.add(new NamedValue(bend, Integer.toString((int) bends)));
        }
        return changes;
    }

    private static boolean warmCold(Design design) {
        Design usual = Outdoors.at(design, Outdoors.usualC(design));
        return usual.coldLegs().get(0).aroundC() > usual.hotLegs().get(0).aroundC();
    }

    private static String narrowCold(Design design) {
        return narrowest(design.coldLegs());
    }

    private static String narrowHot(Design design) {
        return narrowest(design.hotLegs());
    }

    private static String narrowLeg(Design design) {
        List<Leg> both = new ArrayList<>(design.coldLegs());
        both.addAll(design.hotLegs());
        return narrowest(both);
    }

    private static String narrowest(List<Leg> legs) {
        return legs.stream()
                .map(Leg::tube)
                .min(Comparator.comparingDouble(
                        tube -> TubeTable.find(tube).orElseThrow().boreM()))
                .orElseThrow();
    }

    /** Down to none: a fire that is too strong for the water that is drawn leaves nothing else but to lose its heat. */
    private static List<Lever.Step> thinnerCoat(Design design) {
        double thickMm = design.tank().lagging().map(LaggingChoice::thicknessMm).orElse(0.0);
        int most = (int) Math.max(0, Math.ceil(thickMm / 10));
        return new Steps.Grid("tank-cooler", MeasureKind.SMALL_LENGTH_MM, -10, most, true)
                .of("tank.laggingMm", of -> thickMm)
                .of(design);
    }

    /** Down to half of them. */
    private static List<Lever.Step> smallerPanes(Design design) {
        double areaM2 = design.window().map(Window::areaM2).orElse(0.0);
        return new Steps.Grid("panes-smaller", MeasureKind.AREA_M2, -0.1, (int) Math.floor(areaM2 / 2 / 0.1))
                .of("window.areaM2", of -> areaM2)
                .of(design);
    }

    /** Only where the heat is worked out from the fire: a stated heat does not follow the coil. Down to half its length. */
    private static List<Lever.Step> shorterCoil(Design design) {
        if (design.coil().heatKW().isPresent()) {
            return List.of();
        }
        double lengthM = design.coil().lengthM();
        int most = (int) Math.floor(lengthM / 2 / 0.1);
        return new Steps.Grid("coil-shorter", MeasureKind.LENGTH_M, -0.1, most)
                .of("coil.lengthM", of -> of.coil().lengthM())
                .of(design);
    }

    /**
     * A coil with less of its tube in the fire, where its heat is stated: the heat falls with it as the engine's own fire has it, by less than
     * the tube. What it takes then has to be measured or asked for anew. Down to half its length.
     */
    private static List<Lever.Step> smallerCoil(Design design) {
        if (!(design.coil().heatKW().orElse(0) > 0) || design.fire().isEmpty()) {
            return List.of();
        }
        double lengthM = design.coil().lengthM();
        return IntStream.rangeClosed(1, (int) Math.floor(lengthM / 2 / SHORTER_M))
                .mapToObj(i -> smallerCoil(design, lengthM - i * SHORTER_M))
                .flatMap(Optional::stream)
                .toList();
    }

    private static Optional<Lever.Step> smallerCoil(Design design, double toM) {
        try {
            Design worked = Changes.apply(design, "coil.heat", "worked out from the fire");
            Design shorter = Changes.apply(worked, "coil.lengthM", Numeral.typedTo(4, toM));
            double share = usualHeatW(shorter) / usualHeatW(worked);
            double nowKW = design.coil().heatKW().orElseThrow();
            // Up to the next 10 W: no less than it is.
            double toKW = Math.ceil(100 * share * nowKW) / 100;
            return Optional.of(new Lever.Step(
                    List.of(
                            new NamedValue("coil.lengthM", Numeral.typedTo(4, toM)),
                            new NamedValue("coil.heatKW", Numeral.typedTo(2, toKW))),
                    Steps.SENTENCES.say(
                            SMALLER_COIL,
                            "by",
                            new Measure(design.coil().lengthM() - toM, MeasureKind.LENGTH_M),
                            "to",
                            new Measure(toM, MeasureKind.LENGTH_M),
                            "was",
                            new Measure(1000 * nowKW, MeasureKind.POWER_W),
                            "heat",
                            new Measure(1000 * toKW, MeasureKind.POWER_W))));
        } catch (RefusedException cannotBe) {
            // Shorter than the coil is high, or a fire that does not burn as stated.
            return Optional.empty();
        }
    }

    private static double usualHeatW(Design worked) {
        return worked.coilHeatW(CoilHeating.USUAL_FLOW_KG_PER_S, USUAL_INLET_C).mid();
    }

    /** Only where the place of the tank does not freeze as it is stated: beside the tank, it is as warm as that. */
    private static List<Lever.Step> radiator(Design design) {
        double nowKW = design.tank().radiatorKW().orElse(0);
        if (design.tank().aroundC() < RADIATOR_FROM_C) {
            return List.of();
        }
        return IntStream.rangeClosed(1, (int) Math.floor((MOST_RADIATOR_KW - nowKW) / RADIATOR_KW))
                .mapToObj(i -> nowKW + i * RADIATOR_KW)
                .map(toKW -> new Lever.Step(
                        List.of(new NamedValue("tank.radiatorKW", Numeral.typed(toKW))),
                        Steps.SENTENCES.say("radiator", "to", new Measure(1000 * toKW, MeasureKind.POWER_W))))
                .toList();
    }

    /** The rule that is taught, all at once: the coil climbs, one bore all round, no level pipe, no sharp bend and nothing to shut. */
    private static Lever.Ladder anew(String code, double riseM) {
        return design -> Steps.forLoop(design.coil().tube()).stream()
                .map(tube -> new Lever.Step(
                        rebuilt(design, tube, riseM),
                        Steps.SENTENCES.say(code, "tube", tube, "rise", new Measure(riseM, MeasureKind.LENGTH_M))))
                .toList();
    }

    private static List<NamedValue> rebuilt(Design design, String tube, double riseM) {
        List<NamedValue> changes = new ArrayList<>();
        double lowM = Math.min(design.coil().inletM(), design.coil().outletM());
        if (design.coil().riseM() < 0) {
            changes.add(new NamedValue("coil.ends", "the lower end"));
        }
        if (Math.abs(design.coil().riseM()) < riseM) {
            changes.add(new NamedValue("coil.outletM", Numeral.typedTo(4, lowM + riseM)));
        }
        changes.add(new NamedValue("loop.tube", tube));
        for (String code : List.of("no-valve", "swept")) {
            lever(code).steps().of(design).forEach(step -> changes.addAll(step.changes()));
        }
        if (!(Double.parseDouble(Changes.current(design, "loop.slopeMmPerM")) >= NO_LEVEL_MM_PER_M)) {
            changes.add(new NamedValue("loop.slopeMmPerM", Integer.toString(NO_LEVEL_MM_PER_M)));
        }
        boolean lagged = Stream.concat(design.coldLegs().stream(), design.hotLegs().stream())
                .allMatch(leg -> leg.lagging().map(LaggingChoice::thicknessMm).orElse(0.0) >= LAGGED_MM);
        if (!lagged) {
            changes.add(new NamedValue("loop.laggingMm", Integer.toString(LAGGED_MM)));
        }
        return changes;
    }

    private static Lever lever(String code) {
        return ALL.stream()
                .filter(lever -> lever.code().equals(code))
                .findFirst()
                .orElseThrow();
    }

    private static List<Lever.Step> indoors(Design design) {
        List<NamedValue> changes = new ArrayList<>();
        indoors("coldLegs", design.coldLegs(), changes);
        indoors("hotLegs", design.hotLegs(), changes);
        return changes.isEmpty() ? List.of() : List.of(new Lever.Step(changes, Steps.SENTENCES.say("led-indoors")));
    }

    private static void indoors(String side, List<Leg> legs, List<NamedValue> changes) {
        for (int i = 0; i < legs.size(); i++) {
            Leg leg = legs.get(i);
            if (leg.isOutdoors()) {
                changes.add(new NamedValue(side + "[" + i + "].outdoors", "false"));
                changes.add(new NamedValue(side + "[" + i + "].aroundC", "5"));
            }
            if (leg.isOutdoors() || leg.aroundFireOutC().orElse(leg.aroundC()) < 5) {
                changes.add(new NamedValue(side + "[" + i + "].aroundFireOutC", "5"));
            }
        }
    }

    /** Copper where the plastic is: what is left of plastic is out of the loop, a metre off and sees no hot water. */
    private static List<Lever.Step> copper(Design design) {
        List<NamedValue> changes = new ArrayList<>();
        DesignFields.of(design).forEach(value -> {
            if (!value.path().startsWith("safety.materials.plasticPipes[")) {
                return;
            }
            String text = value.text().orElse("");
            boolean hot = value.path().endsWith("].inLoop") || value.path().endsWith("].hotWater");
            if (hot && text.equals("true")) {
                changes.add(new NamedValue(value.path(), "false"));
            } else if (value.path().endsWith("].fromHeaterM") && Double.parseDouble(text) < 1) {
                changes.add(new NamedValue(value.path(), "1"));
            }
        });
        return changes.isEmpty() ? List.of() : List.of(new Lever.Step(changes, Steps.SENTENCES.say("copper-pipe")));
    }

    private static List<Lever.Step> shorterFire(Design design) {
        return design.fire()
                .map(fire -> IntStream.rangeClosed(1, (int) Math.max(0, (fire.longestLitH() - HALF_HOUR) / HALF_HOUR))
                        .mapToObj(step -> shorter(fire, step * HALF_HOUR))
                        .toList())
                .orElse(List.of());
    }

    /** Every fire of the day shorter by so many hours. */
    private static Lever.Step shorter(Fire fire, double byH) {
        List<NamedValue> changes = new ArrayList<>();
        double firstH = Math.max(0, fire.litForH() - byH);
        changes.add(new NamedValue("fire.litForH", Numeral.typedTo(2, firstH)));
        double againH = Math.max(0, fire.litAgainForH().orElse(0) - byH);
        if (fire.litAgainForH().isPresent()) {
            changes.add(new NamedValue("fire.litAgainForH", Numeral.typedTo(2, againH)));
        }
        double inAllH = firstH + againH;
        return new Lever.Step(
                changes,
                Steps.SENTENCES.say(
                        "shorter-fire",
                        "by",
                        new Measure(fire.litHoursADay() - inAllH, MeasureKind.TIME_H),
                        "to",
                        new Measure(inAllH, MeasureKind.TIME_H)));
    }
}
