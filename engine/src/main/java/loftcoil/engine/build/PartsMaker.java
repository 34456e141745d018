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
import loftcoil.engine.design.Design;
import loftcoil.engine.design.Safety;
import loftcoil.engine.design.Tank;
import loftcoil.engine.design.Tap;
import loftcoil.engine.tank.UprightCylinder;
import loftcoil.engine.words.Measure;
import loftcoil.engine.words.MeasureKind;
import loftcoil.engine.words.MeasuredText;

/** Lists what a design needs, each part with its reason. */
final class PartsMaker {

    private static final double M3_PER_L = 0.001;

    /** Allowance on sheet and lagging for cuts and corners; common practice, no source. */
    private static final double ALLOWANCE = 1.1;

    private final Design design;
    private final List<Part> parts = new ArrayList<>();

    private PartsMaker(Design design) {
        this.design = design;
    }

    static PartsList of(Design design, CutList cuts) {
        PartsMaker maker = new PartsMaker(design);
        maker.parts.addAll(PipeParts.of(design, cuts));
        maker.coil();
        maker.parts.addAll(LaggingParts.of(design));
        maker.tankLagging();
        maker.tank();
        maker.window();
        maker.taps();
        maker.safety();
        maker.measuring();
        return new PartsList(maker.parts);
    }

    private void coil() {
        add(
                PIPE,
                MeasuredText.of("brazing rod for copper (silver or phosphor-copper), no soft solder in the fire"),
                1,
                MeasuredText.of(
                        "Soft solder melts at some ",
                        Measure.celsius(230),
                        "; a coil that runs dry is hotter at once."));
        add(
                PIPE,
                MeasuredText.of("tee, drain cock and hose tail at the lowest point of the loop"),
                1,
                MeasuredText.of(
                        "To drain before frost and to flush. It branches off; it is no valve in the loop. The lowest point is the"
                                + " lower end of the coil or the run to it."));
    }

    private void tankLagging() {
        Tank tank = design.tank();
        tank.lagging().filter(choice -> choice.thicknessMm() > 0).ifPresent(choice -> {
            double paneM2 = design.window().map(window -> window.areaM2()).orElse(0.0);
            double areaM2 = Math.max(0, shape().surfaceM2() - paneM2);
            parts.add(new Part(
                    LAGGING,
                    MeasuredText.of(
                            choice.material() + ", ",
                            Measure.millimetres(choice.thicknessMm()),
                            " thick, for the tank"),
                    new Measure(ALLOWANCE * areaM2, MeasureKind.AREA_M2),
                    MeasuredText.of(
                            "Wall, lid and base of the tank, ",
                            new Measure(areaM2, MeasureKind.AREA_M2),
                            paneM2 > 0 ? " without what the panes see," : "",
                            " and a tenth for corners. Lag below it too, with what bears the weight.")));
        });
    }

    private UprightCylinder shape() {
        return new UprightCylinder(
                design.tank().volumeL() * M3_PER_L, design.tank().heightM());
    }

    private void tank() {
        Tank tank = design.tank();
        parts.add(new Part(
                TANK,
                MeasuredText.of(
                        "tank, ",
                        Measure.metres(shape().diameterM()),
                        " across and ",
                        Measure.metres(tank.heightM()),
                        " high inside, if it is round"),
                Measure.litres(tank.volumeL()),
                MeasuredText.of(
                        "Ports at ",
                        Measure.metres(tank.coldPortM()),
                        " (cold), ",
                        Measure.metres(tank.returnPortM()),
                        " (return) and ",
                        Measure.metres(tank.drawPortM()),
                        " (draw) above its base; waterline at ",
                        Measure.metres(tank.waterlineM()),
                        ".")));
        add(
                TANK,
                MeasuredText.of("tank connectors for the ports of the loop, full bore"),
                2,
                MeasuredText.of("Cold port (" + design.coldLegs().get(0).tube() + ") and return port ("
                        + design.hotLegs().get(design.hotLegs().size() - 1).tube()
                        + "). Brass or bronze; the bore must not be narrowed."));
        if (!design.taps().isEmpty()) {
            add(TANK, MeasuredText.of("tank connector for the draw port"), 1, MeasuredText.of("Feeds the taps."));
        }
        feed();
        add(
                TANK,
                MeasuredText.of("overflow pipe, led to where somebody sees it drip, no valve in it"),
                1,
                MeasuredText.of(
                        "Water grows as it warms, and a float valve can stick. Its bore is no less than that of the feed."));
        add(
                TANK,
                MeasuredText.of("sight tube or dip stick, with the least level marked"),
                1,
                MeasuredText.of(
                        "The return port must stay covered while a fire burns: mark ",
                        leastLevel(),
                        " above the base."));
    }

    private Measure leastLevel() {
        return Measure.metres(SafeWater.leastM(design));
    }

    private void feed() {
        design.safety().flatMap(Safety::coldFeed).ifPresent(feed -> {
            if (feed.kind() != loftcoil.engine.design.ColdFeed.Kind.BY_HAND) {
                MeasuredText bore = feed.boreMm().isPresent()
                        ? MeasuredText.of(
                                ", bore ", Measure.millimetres(feed.boreMm().getAsDouble()))
                        : MeasuredText.of("");
                add(
                        TANK,
                        MeasuredText.of(feed.kind().code(), bore),
                        1,
                        MeasuredText.of("The cold feed that the design names. Keep its air gap."));
            }
        });
    }

    private void window() {
        design.window().ifPresent(window -> {
            add(
                    WINDOW,
                    MeasuredText.of(
                            "pane of ",
                            new Measure(window.areaM2(), MeasureKind.AREA_M2),
                            ", or several that make it up"),
                    window.panes(),
                    MeasuredText.of("One behind the other."));
            if (window.panes() > 1) {
                add(
                        WINDOW,
                        MeasuredText.of("spacer frame, ", Measure.millimetres(window.gapMm()), " deep"),
                        window.panes() - 1,
                        MeasuredText.of("The still air between two panes. Salvaged sealed units bring their own."));
            }
            parts.add(new Part(
                    WINDOW,
                    MeasuredText.of("matt black paint that stands ", Measure.celsius(120)),
                    new Measure(window.areaM2(), MeasureKind.AREA_M2),
                    MeasuredText.of(
                            "On the face of the tank behind the panes; it is to swallow ",
                            new Measure(100 * window.absorptance(), MeasureKind.PERCENT),
                            " of the sun.")));
            window.shutter()
                    .ifPresent(board -> parts.add(new Part(
                            WINDOW,
                            MeasuredText.of(
                                    "insulating board as a shutter, ",
                                    new Measure(board.resistanceM2KPerW(), MeasureKind.NONE),
                                    " m² K/W"),
                            new Measure(window.areaM2(), MeasureKind.AREA_M2),
                            MeasuredText.of(
                                    "Closed at ",
                                    new Measure(board.shutFromH(), MeasureKind.TIME_H),
                                    " for ",
                                    new Measure(board.shutForH(), MeasureKind.TIME_H),
                                    "."))));
        });
    }

    private void taps() {
        for (Tap tap : design.taps()) {
            add(
                    TAPS,
                    MeasuredText.of("tap for " + tap.name() + ", full bore"),
                    1,
                    MeasuredText.of(
                            "Mouth at ",
                            Measure.metres(tap.levelM()),
                            "; there is little pressure, so no flow restrictor."));
            tap.mixerC()
                    .ifPresent(most -> add(
                            TAPS,
                            MeasuredText.of(
                                    "thermostatic mixing valve for low pressure, set to ", Measure.celsius(most)),
                            1,
                            MeasuredText.of("Keeps water that scalds from the hands at " + tap.name() + ".")));
        }
    }

    private void safety() {
        design.safety()
                .flatMap(Safety::vent)
                .filter(vent -> vent.tube().isPresent())
                .ifPresent(vent -> {
                    double riseM = vent.aboveWaterlineM().orElse(0)
                            + design.tank().waterlineM()
                            - design.tank().returnPortM();
                    parts.add(new Part(
                            SAFETY,
                            MeasuredText.of("open vent pipe, " + vent.tube().orElseThrow() + ", rising all the way"),
                            Measure.metres(ALLOWANCE * Math.max(0, riseM)),
                            MeasuredText.of(
                                    "From the top of the tank to ",
                                    Measure.metres(vent.aboveWaterlineM().orElse(0)),
                                    " above the waterline, at least; what the way to its open end needs comes on top. Nothing in it"
                                            + " that can be shut.")));
                });
        design.fire()
                .ifPresent(fire -> add(
                        SAFETY,
                        MeasuredText.of("carbon monoxide alarm in the room of the fire"),
                        1,
                        MeasuredText.of("Flue gas has no smell to warn you.")));
    }

    private void measuring() {
        add(
                SAFETY,
                MeasuredText.of("clip-on pipe thermometers, 0 to ", Measure.celsius(120)),
                3,
                MeasuredText.of(
                        "Under the lagging at the coil's outlet, the return port and the coil's inlet: with these three you see"
                                + " whether it circulates."));
        add(
                SAFETY,
                MeasuredText.of("thermometer pockets or clips on the tank"),
                3,
                MeasuredText.of("Top, middle and bottom: how much hot water there is."));
    }

    private void add(Group group, MeasuredText what, int count, MeasuredText why) {
        parts.add(new Part(group, what, Measure.count(count), why));
    }
}
