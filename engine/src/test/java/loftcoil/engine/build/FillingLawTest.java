package loftcoil.engine.build;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import loftcoil.engine.build.Filling.Stage;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.Example;
import loftcoil.engine.design.SafeBothy;
import org.junit.jupiter.api.Test;

/** Water before fire, always; and upkeep for every time of the year. */
class FillingLawTest {

    private static final List<Design> DESIGNS = List.of(
            Example.orchardBothy(),
            SafeBothy.design(),
            SafeBothy.edited(
                    List.of("/window", "null", "/fire", "null", "/safety", "null", "/taps", "[]", "/use", "[]")),
            Example.orchardBothy().withTankBaseM(-0.6));

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
    void noStepBeforeTheFirstFireLightsOne() {
        for (Design design : DESIGNS) {
            for (Filling.Step step : FillingMaker.of(design).steps()) {
                boolean lights = step.what().metric().contains("Light a small fire");
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
