package loftcoil.engine.build;

import static loftcoil.engine.build.PartsList.Group.LAGGING;
import static loftcoil.engine.build.PartsList.Group.PIPE;
import static loftcoil.engine.build.PartsList.Group.SAFETY;
import static loftcoil.engine.build.PartsList.Group.TANK;
import static loftcoil.engine.build.PartsList.Group.TAPS;
import static loftcoil.engine.build.PartsList.Group.WINDOW;

import java.util.ArrayList;
import java.util.List;
import loftcoil.engine.build.PartsList.Group;
import loftcoil.engine.build.PartsList.Part;
import loftcoil.engine.design.ColdFeed;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.Safety;
import loftcoil.engine.design.ShutterChoice;
import loftcoil.engine.design.Structure;
import loftcoil.engine.design.Tank;
import loftcoil.engine.design.Tap;
import loftcoil.engine.design.Vent;
import loftcoil.engine.design.Window;
import loftcoil.engine.pipe.TubeMetal;
import loftcoil.engine.pipe.TubeTable;
import loftcoil.engine.supply.RatedFlow;
import loftcoil.engine.tank.Box;
import loftcoil.engine.tank.FullWeight;
import loftcoil.engine.tank.LyingCylinder;
import loftcoil.engine.words.Measure;
import loftcoil.engine.words.MeasureKind;
import loftcoil.engine.words.MeasuredText;
import loftcoil.engine.words.Sentences;

/** Lists what a design needs, each part with its reason. */
final class PartsMaker {

    private static final Sentences SENTENCES = Sentences.read(PartsMaker.class, "parts.properties");

    /** Allowance on sheet and lagging for cuts and corners; common practice, no source. */
    private static final double ALLOWANCE = 1.1;

    /** Bearers under a tank where the design says none, and straps round it; common practice, no source. */
    static final int USUAL_BEARERS = 2;

    private static final int STRAPS = 2;

    /** Blocks under each pane and beside it, so that glass touches no frame; common practice, no source. */
    private static final int BLOCKS_A_PANE = 6;

    /** Clips round the panes, and how far apart they are at most; common practice, no source. */
    private static final int LEAST_CLIPS = 8;

    private static final double CLIPS_APART_M = 0.3;

    private final Design design;
    private final List<Part> parts = new ArrayList<>();

    private PartsMaker(Design design) {
        this.design = design;
    }

    static PartsList of(Design design, CutList cuts, Fixings fixings) {
        PartsMaker maker = new PartsMaker(design);
        maker.parts.addAll(PipeParts.of(design, cuts));
        maker.coil();
        maker.parts.addAll(FixingParts.of(design, cuts, fixings));
        maker.parts.addAll(LaggingParts.of(design));
        maker.tankLagging();
        maker.tank();
        maker.support();
        maker.window();
        maker.taps();
        maker.safety();
        maker.measuring();
        return new PartsList(maker.parts);
    }

    private void coil() {
        TubeMetal metal = TubeTable.require("coil.tube", design.coil().tube()).metal();
        if (metal == TubeMetal.COPPER) {
            add(PIPE, 1, "parts.brazing-rod");
        } else {
            add(PIPE, 1, "parts.coil-ends", "metal", metal.words());
        }
        add(PIPE, 1, "parts.drain");
    }

    private void tankLagging() {
        Tank tank = design.tank();
        tank.lagging().filter(choice -> choice.thicknessMm() > 0).ifPresent(choice -> {
            double bareM2 = design.coatedTank().bareM2();
            double areaM2 = Math.max(0, tank.shape().surfaceM2() - bareM2);
            parts.add(new Part(
                    LAGGING,
                    SENTENCES.say(
                            "parts.tank-lagging.what",
                            "material",
                            choice.material(),
                            "thick",
                            Measure.millimetres(choice.thicknessMm())),
                    area(ALLOWANCE * areaM2),
                    SENTENCES.say(
                            bareM2 > 0 ? "parts.tank-lagging-panes.why" : "parts.tank-lagging.why",
                            "area",
                            area(areaM2))));
        });
    }

    private void support() {
        int bearers = design.safety()
                .flatMap(Safety::structure)
                .map(Structure::bearers)
                .filter(count -> count > 0)
                .orElse(USUAL_BEARERS);
        boolean lying = design.tank().shape() instanceof LyingCylinder;
        add(TANK, lying ? LoadsMaker.SADDLES : bearers, lying ? "parts.saddles" : "parts.bearers");
        double shoveN = FullWeight.of(design.tank().shape(), design.tank().emptyMassKg())
                        .forceN()
                / 10;
        add(TANK, STRAPS, "parts.straps", "shove", new Measure(shoveN, MeasureKind.FORCE_N));
        design.safety()
                .flatMap(Safety::vent)
                .filter(vent -> vent.kind() == Vent.Kind.LOOSE_LID)
                .ifPresent(vent -> add(TANK, 1, "parts.lid"));
    }

    private static MeasuredText shapeOf(Tank tank) {
        Measure high = Measure.metres(tank.heightM());
        if (tank.shape() instanceof LyingCylinder lying) {
            return SENTENCES.say("parts.tank.lying.what", "across", high, "long", Measure.metres(lying.lengthM()));
        }
        if (tank.shape() instanceof Box box) {
            return SENTENCES.say(
                    "parts.tank.box.what",
                    "long",
                    Measure.metres(box.lengthM()),
                    "wide",
                    Measure.metres(box.widthM()),
                    "high",
                    high);
        }
        return SENTENCES.say(
                "parts.tank.upright.what", "across", Measure.metres(tank.shape().frontM()), "high", high);
    }

    private static Measure area(double areaM2) {
        return new Measure(areaM2, MeasureKind.AREA_M2);
    }

    private void tank() {
        Tank tank = design.tank();
        parts.add(new Part(
                TANK,
                shapeOf(tank),
                Measure.litres(tank.volumeL()),
                SENTENCES.say(
                        "parts.tank.why",
                        "cold",
                        Measure.metres(tank.coldPortM()),
                        "return",
                        Measure.metres(tank.returnPortM()),
                        "draw",
                        Measure.metres(tank.drawPortM()),
                        "waterline",
                        Measure.metres(tank.waterlineM()))));
        add(
                TANK,
                2,
                "parts.loop-connectors",
                "cold",
                design.coldLegs().get(0).tube(),
                "return",
                design.hotLegs().get(design.hotLegs().size() - 1).tube());
        if (!design.taps().isEmpty()) {
            add(TANK, 1, "parts.draw-connector");
        }
        design.safety()
                .flatMap(Safety::coldFeed)
                .filter(feed -> feed.kind() != ColdFeed.Kind.BY_HAND)
                .ifPresent(this::feed);
        tank.radiatorKW()
                .ifPresent(kW -> add(TANK, 1, "parts.radiator", "heat", new Measure(kW, MeasureKind.POWER_KW)));
        add(TANK, 1, "parts.overflow");
        add(TANK, 1, "parts.sight-tube", "least", Measure.metres(SafeWater.leastM(design)));
    }

    private void feed(ColdFeed feed) {
        // A feed that is not by hand says its bore, or the design is refused.
        Measure bore = Measure.millimetres(feed.boreMm().orElseThrow());
        add(TANK, 1, "parts.feed", "feed", feed.kind().code(), "bore", bore);
    }

    private void window() {
        design.window().ifPresent(window -> {
            Measure area = area(window.areaM2());
            parts.add(new Part(
                    WINDOW,
                    SENTENCES.say("parts.panes.what", "area", area),
                    Measure.count(window.panes()),
                    panesWhy(window)));
            if (window.panes() > 1) {
                add(WINDOW, window.panes() - 1, "parts.spacer", "gap", Measure.millimetres(window.gapMm()));
            }
            add(
                    WINDOW,
                    Measure.metres(ALLOWANCE * 4 * Math.sqrt(window.areaM2())),
                    "parts.frame",
                    "weight",
                    Measure.kilograms(LoadsMaker.glassKg(window)));
            add(WINDOW, BLOCKS_A_PANE * window.panes(), "parts.blocks");
            double roundM = 4 * Math.sqrt(window.areaM2());
            double downKg = LoadsMaker.glassKg(window) * Math.sin(Math.toRadians(window.tiltDeg()));
            int clips = Math.max(LEAST_CLIPS, (int) Math.ceil(roundM / CLIPS_APART_M));
            add(WINDOW, clips, "parts.glass-clips", "along", Measure.kilograms(downKg));
            Measure share = new Measure(100 * window.absorptance(), MeasureKind.PERCENT);
            add(WINDOW, area(design.coatedTank().bareM2()), "parts.paint", "share", share);
            if (window.reflected() > 0) {
                reflectors(window);
            }
            window.shutter().ifPresent(board -> shutter(area, board));
        });
    }

    private static MeasuredText panesWhy(Window window) {
        int toughened = Math.min(window.toughened().orElse(0), window.panes());
        boolean coated = window.coating().isPresent() && window.panes() > 1;
        return SENTENCES.say(
                coated ? "parts.panes-coated.why" : "parts.panes.why", "toughened", Measure.count(toughened));
    }

    /** Bright sheet for the panes that see past the tank, as large as what shines past. */
    private void reflectors(Window window) {
        double seenM2 = design.seenFace().orElseThrow().outlineM2();
        double pastM2 = Math.max(0, window.areaM2() - seenM2);
        if (pastM2 > 0) {
            add(
                    WINDOW,
                    area(ALLOWANCE * pastM2),
                    "parts.reflector",
                    "share",
                    new Measure(100 * window.reflected(), MeasureKind.PERCENT));
        }
    }

    private void shutter(Measure area, ShutterChoice board) {
        add(
                WINDOW,
                area,
                "parts.shutter",
                "resistance",
                new Measure(board.resistanceM2KPerW(), MeasureKind.RESISTANCE_M2K_PER_W),
                "from",
                new Measure(board.shutFromH(), MeasureKind.TIME_H),
                "hours",
                new Measure(board.shutForH(), MeasureKind.TIME_H));
    }

    private void taps() {
        for (Tap tap : design.taps()) {
            tap.rated()
                    .ifPresentOrElse(
                            rated -> add(
                                    TAPS,
                                    1,
                                    "parts.tap-rated",
                                    "tap",
                                    tap.name(),
                                    "mouth",
                                    Measure.metres(tap.levelM()),
                                    "flow",
                                    flow(rated),
                                    "pressure",
                                    pressure(rated)),
                            () -> add(TAPS, 1, "parts.tap", "tap", tap.name(), "mouth", Measure.metres(tap.levelM())));
            tap.mixer()
                    .ifPresent(rated -> add(
                            TAPS,
                            1,
                            "parts.mixer",
                            "most",
                            Measure.celsius(tap.mixerC().orElseThrow()),
                            "tap",
                            tap.name(),
                            "flow",
                            flow(rated),
                            "pressure",
                            pressure(rated)));
        }
    }

    private static Measure flow(RatedFlow rated) {
        return new Measure(rated.lPerMin(), MeasureKind.FLOW_L_PER_MIN);
    }

    private static Measure pressure(RatedFlow rated) {
        return new Measure(rated.kPa(), MeasureKind.PRESSURE_KPA);
    }

    private void safety() {
        design.safety()
                .flatMap(Safety::vent)
                .filter(vent -> vent.tube().isPresent())
                .ifPresent(vent ->
                        vent(vent.tube().orElseThrow(), vent.aboveWaterlineM().orElse(0)));
        design.fire().ifPresent(fire -> {
            add(SAFETY, 1, "parts.alarm");
            add(SAFETY, 1, "parts.flue-thermometer");
        });
    }

    private void vent(String tube, double aboveM) {
        double riseM = aboveM + design.tank().waterlineM() - design.tank().returnPortM();
        add(
                SAFETY,
                Measure.metres(ALLOWANCE * Math.max(0, riseM)),
                "parts.vent",
                "tube",
                tube,
                "above",
                Measure.metres(aboveM));
    }

    private void measuring() {
        add(SAFETY, 3, "parts.pipe-thermometers");
        add(SAFETY, 3, "parts.tank-thermometers");
    }

    private void add(Group group, int count, String code, Object... filling) {
        add(group, Measure.count(count), code, filling);
    }

    private void add(Group group, Measure amount, String code, Object... filling) {
        parts.add(part(group, amount, code, filling));
    }

    /** A line whose sentences stand under {@code code.what} and {@code code.why}. */
    static Part part(Group group, Measure amount, String code, Object... filling) {
        List<MeasuredText> said = SENTENCES.sayEach(code, List.of("what", "why"), filling);
        return new Part(group, said.get(0), amount, said.get(1));
    }
}
