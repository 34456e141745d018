package loftcoil.engine.build;

import static loftcoil.engine.build.Filling.Stage.AFTER;
import static loftcoil.engine.build.Filling.Stage.BEFORE;
import static loftcoil.engine.build.Filling.Stage.BLEED;
import static loftcoil.engine.build.Filling.Stage.FILL;
import static loftcoil.engine.build.Filling.Stage.FIRST_FIRE;
import static loftcoil.engine.build.Filling.Stage.LEAK_TEST;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loftcoil.engine.build.Filling.Stage;
import loftcoil.engine.build.Filling.Step;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.Leg;
import loftcoil.engine.pipe.TubeTable;
import loftcoil.engine.words.Measure;
import loftcoil.engine.words.MeasureKind;
import loftcoil.engine.words.MeasuredText;

/** The order of filling: water before fire, always. Common practice, no source, except where a figure is named. */
final class FillingMaker {

    private static final double L_PER_M3 = 1000;
    private static final double DRY_FIRE_TANK_C = 40;

    private final Design design;
    private final List<Step> steps = new ArrayList<>();

    private FillingMaker(Design design) {
        this.design = design;
    }

    static Filling of(Design design) {
        FillingMaker maker = new FillingMaker(design);
        maker.before();
        maker.fill();
        maker.leakTest();
        maker.bleed();
        maker.firstFire();
        maker.after();
        return new Filling(maker.steps);
    }

    private void before() {
        danger(
                BEFORE,
                "Rake out the fire box and put a sign on its door: **no water, no fire**. It comes off only after the last"
                        + " step of bleeding.",
                "An empty coil in a fire is red hot in minutes. Water let into it then flashes to steam: it scalds and can"
                        + " burst the coil.");
        step(
                BEFORE,
                MeasuredText.of(
                        "Blow through the vent and the overflow, and look through both ends: nothing in them, nothing in their"
                                + " way that can be shut."));
        step(
                BEFORE,
                MeasuredText.of(
                        "Lay a level on every leg: all of them rise the way the drawing says, without a sag in which air or"
                                + " sludge can stay."));
        step(
                BEFORE,
                MeasuredText.of(
                        "Have whoever answers for it look at bearers, straps, flue and clearances before the weight comes."));
    }

    private void fill() {
        double loopL = loopLitres();
        step(
                FILL,
                MeasuredText.of(
                        "Fill slowly with cold water from below, through the drain cock of the loop if you can, so that the water"
                                + " pushes the air up in front of it. The loop takes ",
                        Measure.litres(loopL),
                        ", the tank ",
                        Measure.litres(waterlineLitres()),
                        " up to the waterline."));
        danger(
                FILL,
                "Stop at a quarter and at half, and look at the bearers and what they stand on each time.",
                "The weight comes with the water. Nobody stands under the tank while it fills for the first time.");
        step(
                FILL,
                MeasuredText.of(
                        "Fill to the waterline, ",
                        Measure.metres(design.tank().waterlineM()),
                        " above the tank's base, and let the feed close by itself if it has a float valve. The least level for"
                                + " a fire is ",
                        Measure.metres(SafeWater.leastM(design)),
                        ": mark it."));
    }

    private void leakTest() {
        step(
                LEAK_TEST,
                MeasuredText.of(
                        "Wipe every joint dry, wait half an hour, and pass dry paper round each: the coil's joints, the unions, the"
                                + " ports, the drain."));
        step(
                LEAK_TEST,
                MeasuredText.of(
                        "Leave it full and cold overnight. The level must be the same in the morning to the millimetre that you"
                                + " can read. A joint that weeps is drained, dried and made anew; it does not heal when hot."));
    }

    private void bleed() {
        step(
                BLEED,
                MeasuredText.of(
                        "Knock along the hot legs from the coil up: a pipe full of water sounds dull, one with air in it rings."));
        step(
                BLEED,
                MeasuredText.of(
                        "Run a bucket out of the drain cock with the tank topped up: the water must come in a steady stream, without"
                                + " spitting. Then fill to the waterline again."));
        step(
                BLEED,
                MeasuredText.of(
                        "See that water stands over the return port and the vent is open. Only now take the sign off the door."));
    }

    private void firstFire() {
        MeasuredText small = design.fire()
                .map(fire -> MeasuredText.of(
                        "Light a small fire of dry kindling: a third of what the design burns, about ",
                        new Measure(fire.burnKgPerH() / 3, MeasureKind.MASS_KG_PER_H),
                        ", and stay with it for the whole hour."))
                .orElse(MeasuredText.of("Light a small fire of dry kindling and stay with it for the whole hour."));
        danger(
                FIRST_FIRE,
                small,
                "If the loop knocks, the vent spits, or the top of the hot leg stays cold while the coil's outlet gets too hot to"
                        + " touch: rake the fire out into a metal bucket and carry it outside. Do not pour water on the coil,"
                        + " and do not let cold water into a loop that boils.");
        step(
                FIRST_FIRE,
                MeasuredText.of(
                        "Read the three pipe thermometers every five minutes and write them into the log. With a third of the fire"
                                + " everything in the table of the first hour comes later and milder, but in the same order:"
                                + " coil outlet, top of the hot leg, top of the tank, and last the cold leg."));
        step(
                FIRST_FIRE,
                MeasuredText.of(
                        "When the top of the tank is at ",
                        Measure.celsius(DRY_FIRE_TANK_C),
                        " let the fire go out, and check that nothing circulates backward: an hour later the foot of the cold leg"
                                + " is no warmer than it was."));
    }

    private void after() {
        step(AFTER, MeasuredText.of("Look at every joint once more, warm. Then lag them."));
        step(
                AFTER,
                MeasuredText.of(
                        "Draw the whole first filling off through the taps and fill anew: it carries flux, oil and filings."));
        step(
                AFTER,
                MeasuredText.of(
                        "Next day a full fire, with the table of the first hour in your hand. Keep the sheet with the log: they are"
                                + " what you compare with in years to come."));
    }

    private double loopLitres() {
        double litres = TubeTable.require("coil.tube", design.coil().tube()).volumeM3PerM()
                * design.coil().lengthM()
                * L_PER_M3;
        List<Leg> legs = new ArrayList<>(design.coldLegs());
        legs.addAll(design.hotLegs());
        for (Leg leg : legs) {
            litres += TubeTable.require("tube", leg.tube()).volumeM3PerM() * leg.lengthM() * L_PER_M3;
        }
        return litres;
    }

    private double waterlineLitres() {
        return design.tank().volumeL()
                * design.tank().waterlineM()
                / design.tank().heightM();
    }

    private void step(Stage stage, MeasuredText what) {
        steps.add(new Step(stage, what, Optional.empty()));
    }

    private void danger(Stage stage, String what, String caution) {
        danger(stage, MeasuredText.of(what), caution);
    }

    private void danger(Stage stage, MeasuredText what, String caution) {
        steps.add(new Step(stage, what, Optional.of(MeasuredText.of(caution))));
    }
}
