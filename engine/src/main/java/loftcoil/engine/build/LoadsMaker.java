package loftcoil.engine.build;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loftcoil.engine.build.Loads.Load;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.Leg;
import loftcoil.engine.design.Safety;
import loftcoil.engine.design.Structure;
import loftcoil.engine.design.Tank;
import loftcoil.engine.design.Wheels;
import loftcoil.engine.design.Window;
import loftcoil.engine.pipe.Tube;
import loftcoil.engine.pipe.TubeTable;
import loftcoil.engine.sun.Glass;
import loftcoil.engine.tank.FullWeight;
import loftcoil.engine.tank.LyingCylinder;
import loftcoil.engine.tank.SteelBand;
import loftcoil.engine.tank.TankPlace;
import loftcoil.engine.tank.TankShape;
import loftcoil.engine.tank.TimberBearer;
import loftcoil.engine.tank.Trailer;
import loftcoil.engine.tank.WheelLoad;
import loftcoil.engine.water.Water;
import loftcoil.engine.words.Measure;
import loftcoil.engine.words.MeasureKind;
import loftcoil.engine.words.MeasuredText;
import loftcoil.engine.words.Sentences;

/** Weighs the parts of a design. */
final class LoadsMaker {

    private static final Sentences SENTENCES = Sentences.read(LoadsMaker.class, "loads.properties");
    private static final double MM_PER_M = 1000;

    /** A lying tank stands on so many saddles. */
    static final int SADDLES = 2;

    /** Arc of a saddle round the tank, degrees; common practice, no source (pressure-vessel codes ask for at least 120°, from memory). */
    private static final double SADDLE_ARC_DEG = 120;

    /** Way of each saddle from its end, share of the length: where the bending over the saddles equals that between them. */
    private static final double SADDLE_INWARD = 0.207;

    /** Width of a saddle, m; common practice, no source. */
    private static final double SADDLE_WIDE_M = 0.1;

    /** Bearers that give unevenly put so much more on one; common practice, no source. */
    private static final double UNEVEN = 1.5;

    /** Clear spans that a bearer is sized for, m. */
    private static final double[] SPANS_M = {0.6, 0.9, 1.2, 1.8};

    /** Legs that a lean is told for, m. */
    private static final double LEG_M = 0.5;

    /** Density of soda-lime glass, EN 572-1. */
    private static final double GLASS_KG_PER_M3 = 2500;

    private final Design design;
    private final List<Load> loads = new ArrayList<>();
    private final List<MeasuredText> notes = new ArrayList<>();

    private LoadsMaker(Design design) {
        this.design = design;
    }

    static Loads of(Design design) {
        LoadsMaker maker = new LoadsMaker(design);
        maker.tank();
        maker.pipes();
        maker.panes();
        maker.note("loads.dead-load-only");
        return new Loads(maker.loads, maker.notes);
    }

    private void tank() {
        Tank tank = design.tank();
        TankShape shape = tank.shape();
        FullWeight full = FullWeight.of(shape, tank.emptyMassKg());
        double toWaterlineKg = tank.emptyMassKg() + full.waterKg() * tank.waterlineL() / tank.volumeL();
        add("loads.empty", Measure.kilograms(tank.emptyMassKg()));
        add("loads.to-the-waterline", Measure.kilograms(toWaterlineKg));
        add("loads.to-the-brim", Measure.kilograms(full.massKg()), "cold", Measure.celsius(FullWeight.COLD_C));
        add("loads.force", newtons(full.forceN()));
        if (shape instanceof LyingCylinder lying) {
            saddles(lying, full);
        } else {
            add("loads.floor", new Measure(full.pressureKNPerM2(), MeasureKind.LOAD_KN_PER_M2));
            lean(shape, full);
        }
        structure(full);
        handOver(full);
    }

    /** What somebody who reckons beams and fixings has to be told, and what comes of the published rules where nothing is special. */
    private void handOver(FullWeight full) {
        note(
                "loads.hand-over",
                "full",
                kilonewtons(full.forceN()),
                "shove",
                kilonewtons(full.forceN() / 10),
                "middle",
                Measure.metres(design.tank().baseM() + design.tank().heightM() / 2));
        int bearers = design.safety()
                .flatMap(Safety::structure)
                .map(Structure::bearers)
                .filter(count -> count > 0)
                .orElse(PartsMaker.USUAL_BEARERS);
        double eachN = UNEVEN * full.perBearerN(bearers);
        List<Object> spans = new ArrayList<>();
        for (double spanM : SPANS_M) {
            TimberBearer.deepMm(eachN, spanM).ifPresent(deep -> {
                spans.add(spans.isEmpty() ? "" : ", ");
                spans.add(SENTENCES.say(
                        "loads.span",
                        "deep",
                        Measure.millimetres(deep),
                        "span",
                        Measure.metres(spanM).finer(-1)));
            });
        }
        if (spans.isEmpty()) {
            note("loads.bearer-by-engineer", "each", kilonewtons(eachN));
        } else {
            note(
                    "loads.bearer-size",
                    "bearers",
                    Measure.count(bearers),
                    "each",
                    kilonewtons(eachN),
                    "wide",
                    Measure.millimetres(TimberBearer.WIDE_MM),
                    "spans",
                    MeasuredText.of(spans.toArray()));
        }
        boolean held = full.forceN() / 10 <= SteelBand.carriesN();
        note(
                held ? "loads.band" : "loads.band-by-engineer",
                "wide",
                Measure.millimetres(SteelBand.WIDE_MM),
                "thick",
                Measure.millimetres(SteelBand.THICK_MM),
                "hole",
                Measure.millimetres(SteelBand.HOLE_MM),
                "carries",
                kilonewtons(SteelBand.carriesN()));
    }

    private static Measure kilonewtons(double forceN) {
        return new Measure(forceN / 1000, MeasureKind.FORCE_KN);
    }

    private void structure(FullWeight full) {
        Optional<Structure> structure = design.safety().flatMap(Safety::structure);
        structure.filter(carries -> carries.bearers() > 0).ifPresent(carries -> {
            double eachN = full.perBearerN(carries.bearers());
            add("loads.bearer", newtons(eachN), "bearers", Measure.count(carries.bearers()));
            note("loads.bearers-give", "uneven", newtons(1.5 * eachN));
        });
        structure.ifPresent(carries -> note("loads.may-carry", "limit", Measure.kilograms(carries.loadLimitKg())));
        structure.flatMap(Structure::wheels).ifPresent(wheels -> wheels(wheels, full));
    }

    private void wheels(Wheels wheels, FullWeight full) {
        Trailer trailer = new Trailer(
                wheels.massKg(), wheels.centreHeightM(), wheels.centreAheadM(), wheels.hitchAheadM(), wheels.trackM());
        double heightM =
                wheels.floorAboveRoadM() + design.tank().baseM() + design.tank().heightM() / 2;
        WheelLoad load = WheelLoad.of(trailer, full, new TankPlace(heightM, wheels.tankAheadM(), wheels.tankAsideM()));
        add("loads.axle", newtons(load.axleN()));
        add("loads.hitch", newtons(load.hitchN()));
        add("loads.tips", new Measure(load.tipsAtDeg(), MeasureKind.ANGLE_DEG));
        note("loads.drain-to-move");
    }

    /**
     * A lying tank on two saddles: half its weight on each, as long as they stand a fifth of the length from the ends, which is
     * where the tank bends least over them (a beam on two supports, plane statics). It rolls off what does not hold its sides.
     */
    private void saddles(LyingCylinder shape, FullWeight full) {
        double eachN = full.perBearerN(SADDLES);
        double wrapM = shape.diameterM() * Math.PI * SADDLE_ARC_DEG / 360;
        double chordM = shape.diameterM() * Math.sin(Math.toRadians(SADDLE_ARC_DEG / 2));
        add("loads.saddle", newtons(eachN), "inward", Measure.metres(shape.lengthM() * SADDLE_INWARD));
        add(
                "loads.under-saddle",
                new Measure(eachN / 1000 / (chordM * SADDLE_WIDE_M), MeasureKind.LOAD_KN_PER_M2),
                "wide",
                Measure.millimetres(MM_PER_M * SADDLE_WIDE_M),
                "wrap",
                Measure.metres(wrapM),
                "arc",
                new Measure(SADDLE_ARC_DEG, MeasureKind.ANGLE_DEG));
        note("loads.saddles-give", "uneven", newtons(1.5 * eachN));
        note(
                "loads.rolls",
                "arc",
                new Measure(SADDLE_ARC_DEG / 2, MeasureKind.ANGLE_DEG),
                "shove",
                newtons(full.forceN() / 10));
    }

    private void lean(TankShape shape, FullWeight full) {
        double leanDeg = Math.toDegrees(Math.atan2(shape.standsOnM() / 2, shape.heightM() / 2));
        add("loads.lean", new Measure(leanDeg, MeasureKind.ANGLE_DEG));
        note("loads.strap", "shove", newtons(full.forceN() / 10));
        double leggedDeg = Math.toDegrees(Math.atan2(shape.standsOnM() / 2, LEG_M + shape.heightM() / 2));
        note(
                "loads.legs",
                "leg",
                Measure.metres(LEG_M).finer(-1),
                "falls",
                new Measure(leggedDeg, MeasureKind.ANGLE_DEG),
                "half",
                newtons(full.perBearerN(2)));
    }

    private void pipes() {
        List<Leg> legs = new ArrayList<>(design.coldLegs());
        legs.addAll(design.hotLegs());
        double all = 0;
        for (Leg leg : legs) {
            all += pipe(SENTENCES.say("loads.leg.what", "leg", leg.name()), leg.tube(), leg.lengthM());
        }
        all += pipe(
                SENTENCES.say("loads.coil.what"),
                design.coil().tube(),
                design.coil().lengthM());
        add("loads.loop", Measure.kilograms(all));
    }

    private double pipe(MeasuredText what, String name, double lengthM) {
        Tube tube = TubeTable.require("tube", name);
        double kgPerM = tube.metalKgPerM() + tube.volumeM3PerM() * Water.densityKgPerM3(FullWeight.COLD_C);
        MeasuredText why = SENTENCES.say(
                "loads.tube.why",
                "whole",
                new Measure(kgPerM, MeasureKind.MASS_KG_PER_M),
                "tube",
                name,
                "metal",
                new Measure(tube.metalKgPerM(), MeasureKind.MASS_KG_PER_M),
                "of",
                tube.metal().words());
        loads.add(new Load(what, Measure.kilograms(kgPerM * lengthM), why));
        return kgPerM * lengthM;
    }

    private void panes() {
        design.window().ifPresent(window -> {
            double thickM = Glass.SALVAGED_FLOAT.thicknessM();
            add(
                    "loads.panes",
                    Measure.kilograms(glassKg(window)),
                    "thick",
                    Measure.millimetres(MM_PER_M * thickM),
                    "density",
                    new Measure(GLASS_KG_PER_M3, MeasureKind.DENSITY_KG_PER_M3));
        });
    }

    /** What the panes weigh, taken as salvaged float glass, kg. */
    static double glassKg(Window window) {
        return window.panes() * window.areaM2() * Glass.SALVAGED_FLOAT.thicknessM() * GLASS_KG_PER_M3;
    }

    private static Measure newtons(double forceN) {
        return new Measure(forceN, MeasureKind.FORCE_N);
    }

    private void add(String code, Measure value, Object... filling) {
        List<MeasuredText> said = SENTENCES.sayEach(code, List.of("what", "why"), filling);
        loads.add(new Load(said.get(0), value, said.get(1)));
    }

    private void note(String code, Object... filling) {
        notes.add(SENTENCES.say(code, filling));
    }
}
