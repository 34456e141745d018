package loftcoil.engine.build;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.regex.Pattern;
import loftcoil.engine.build.Filling.Stage;
import loftcoil.engine.caution.Conduct;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.Example;
import loftcoil.engine.design.SafeBothy;
import loftcoil.engine.sheet.FirstCharge;
import loftcoil.engine.words.Measure;
import loftcoil.engine.words.MeasureKind;
import org.junit.jupiter.api.Test;

/** Water before fire, always; and upkeep for every time of the year. */
class FillingLawTest {

    private static final List<Design> DESIGNS = List.of(
            Example.orchardBothy(),
            SafeBothy.design(),
            SafeBothy.edited(
                    List.of("/window", "null", "/fire", "null", "/safety", "null", "/taps", "[]", "/use", "[]")),
            Example.orchardBothy().withTankBaseM(-0.6));

    private static final Pattern LIGHTS = Pattern.compile("\\b[Ll]ight (it|a|the)\\b");

    @Test
    void stagesComeInTheirOrderAndNoneIsMissing() {
        for (Design design : DESIGNS) {
            List<Stage> stages = FillingMaker.of(design).steps().stream()
                    .map(Filling.Step::stage)
                    .toList();
            assertEquals(stages.stream().sorted().toList(), stages);
            assertEquals(List.of(Stage.values()), stages.stream().distinct().toList());
        }
    }

    @Test
    void theFirstFireIsOneWeighedChargeAndItsDangerTheTableOfConduct() {
        for (Design design : DESIGNS) {
            Filling.Step first = FillingMaker.of(design).steps().stream()
                    .filter(step -> step.stage() == Stage.FIRST_FIRE)
                    .findFirst()
                    .orElseThrow();
            assertTrue(
                    LIGHTS.matcher(first.what().metric()).find(), first.what().metric());
            Measure charge = first.what().parts().stream()
                    .filter(Measure.class::isInstance)
                    .map(Measure.class::cast)
                    .filter(measure -> measure.kind() == MeasureKind.SMALL_MASS_G)
                    .findFirst()
                    .orElseThrow();
            double most = FirstCharge.of(design).chargeG();
            assertTrue(charge.value() <= most && charge.value() > most - 5, charge + " of " + most);
            assertEquals(
                    Conduct.FIRST_FIRE.act().metric() + " "
                            + Conduct.STEAM.rule().metric(),
                    first.caution().orElseThrow().metric());
        }
    }

    @Test
    void noStepBeforeTheFirstFireLightsOne() {
        for (Design design : DESIGNS) {
            for (Filling.Step step : FillingMaker.of(design).steps()) {
                boolean lights = LIGHTS.matcher(step.what().metric()).find();
                assertTrue(
                        !lights || step.stage() == Stage.FIRST_FIRE, step.what().metric());
            }
        }
    }

    @Test
    void theFirstFireHasItsDanger() {
        for (Design design : DESIGNS) {
            assertTrue(FillingMaker.of(design).steps().stream()
                    .filter(step -> step.stage() == Stage.FIRST_FIRE)
                    .anyMatch(step -> step.caution().isPresent()));
        }
    }

    /** The caution about legionella asks for every seven days; the work list must not ask for less. */
    @Test
    void theTankIsHeatedThroughEachWeek() {
        for (Design design : DESIGNS) {
            assertTrue(UpkeepMaker.of(design).of(Upkeep.When.WEEKLY).stream()
                    .anyMatch(task -> task.what().metric().startsWith("Heat the whole tank to 60 °C")));
        }
    }

    @Test
    void upkeepKnowsEveryTime() {
        for (Design design : DESIGNS) {
            Upkeep upkeep = UpkeepMaker.of(design);
            for (Upkeep.When when : Upkeep.When.values()) {
                assertTrue(!upkeep.of(when).isEmpty(), when.label());
            }
        }
    }
}
