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
import loftcoil.engine.caution.Conduct;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.Leg;
import loftcoil.engine.pipe.TubeTable;
import loftcoil.engine.sheet.FirstCharge;
import loftcoil.engine.words.Measure;
import loftcoil.engine.words.MeasureKind;
import loftcoil.engine.words.MeasuredText;
import loftcoil.engine.words.Sentences;

/** The order of filling: water before fire, always. */
final class FillingMaker {

    private static final Sentences SENTENCES = Sentences.read(FillingMaker.class, "filling.properties");
    private static final double L_PER_M3 = 1000;

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
        danger(BEFORE, "filling.cold-fire-box");
        step(BEFORE, "filling.blow-through");
        step(BEFORE, "filling.legs-rise");
        step(BEFORE, "filling.have-it-looked-at");
    }

    private void fill() {
        step(
                FILL,
                "filling.from-below",
                "loop",
                Measure.litres(loopLitres()),
                "tank",
                Measure.litres(waterlineLitres()));
        danger(FILL, "filling.stop-and-look");
        step(
                FILL,
                "filling.to-the-waterline",
                "waterline",
                Measure.metres(design.tank().waterlineM()),
                "least",
                Measure.metres(SafeWater.leastM(design)));
    }

    private void leakTest() {
        step(LEAK_TEST, "filling.paper-round-joints");
        step(LEAK_TEST, "filling.overnight");
    }

    private void bleed() {
        step(BLEED, "filling.knock-along");
        step(BLEED, "filling.run-a-bucket");
        step(BLEED, "filling.sign-off");
    }

    private void firstFire() {
        FirstCharge charge = FirstCharge.of(design);
        List<MeasuredText> said = SENTENCES.sayEach(
                "filling.first-charge",
                List.of("what", "caution"),
                "charge",
                new Measure(charge.weighedG(), MeasureKind.SMALL_MASS_G),
                "water",
                Measure.kilograms(charge.coilWaterKg()),
                "share",
                new Measure(charge.share(), MeasureKind.SHARE),
                "firstFire",
                Conduct.FIRST_FIRE.act(),
                "steam",
                Conduct.STEAM.rule());
        steps.add(new Step(FIRST_FIRE, said.get(0), Optional.of(said.get(1))));
        design.fire()
                .ifPresentOrElse(
                        fire -> step(
                                FIRST_FIRE,
                                "filling.next-charge-third",
                                "burn",
                                new Measure(fire.burnKgPerH() / 3, MeasureKind.MASS_KG_PER_H)),
                        () -> step(FIRST_FIRE, "filling.next-charge"));
        step(FIRST_FIRE, "filling.read-and-write");
        step(FIRST_FIRE, "filling.let-it-go-out");
    }

    private void after() {
        step(AFTER, "filling.look-warm");
        step(AFTER, "filling.draw-it-off");
        step(AFTER, "filling.lag-the-joints");
        step(AFTER, "filling.full-fire");
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
        return design.tank().waterlineL();
    }

    private void step(Stage stage, String code, Object... filling) {
        steps.add(new Step(stage, SENTENCES.say(code, filling), Optional.empty()));
    }

    private void danger(Stage stage, String code) {
        List<MeasuredText> said = SENTENCES.sayEach(code, List.of("what", "caution"));
        steps.add(new Step(stage, said.get(0), Optional.of(said.get(1))));
    }
}
