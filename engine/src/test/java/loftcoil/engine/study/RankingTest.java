package loftcoil.engine.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.DesignJson;
import loftcoil.engine.design.Example;
import loftcoil.engine.run.YearRun;
import org.junit.jupiter.api.Test;

class RankingTest {

    private static final Design BOTHY = Example.orchardBothy();

    @Test
    void theEffectIsThatOfTheChangeReckonedByItself() {
        Ranking ranking = finished(Figure.flow(40));
        double now = flow(BOTHY);
        assertEquals(now, ranking.now().orElseThrow(), 1e-12);
        Ranking.Effect higher = effect(ranking, "tank 0.25 m higher");
        assertEquals(flow(BOTHY.withTankBaseM(2.45)) - now, higher.better(), 1e-12);
        assertTrue(higher.better() > 0);
        assertTrue(effect(ranking, "0.5 kW less heat in the coil").better() < 0);
    }

    @Test
    void theMostHelpfulStandsFirst() {
        List<Ranking.Effect> effects = finished(Figure.boilMargin(40)).effects();
        for (int i = 1; i < effects.size(); i++) {
            assertTrue(effects.get(i - 1).better() >= effects.get(i).better());
        }
        assertTrue(effects.size() >= 6, effects.toString());
    }

    @Test
    void whereLessIsBetterAFallIsTheGain() {
        Ranking.Effect lagging = effect(finished(Figure.nightLoss(60)), "10 mm more lagging on every leg");
        assertTrue(lagging.better() >= 0, lagging.toString());
    }

    @Test
    void aPaneAndTankLaggingAreRankedByTheYear() {
        List<PracticalStep> two = PracticalStep.all().stream()
                .filter(step -> step.words().contains("pane") || step.words().contains("on the tank"))
                .toList();
        Ranking ranking = Ranking.of(BOTHY, Figure.yearShortfall(), two, ProgressListener.NONE)
                .result();

        double now = ranking.now().orElseThrow();
        double lagged = YearRun.of(two.get(0).done().apply(BOTHY).orElseThrow()).shortfallKWh();
        assertEquals(2, ranking.effects().size());
        assertEquals(
                now - lagged, effect(ranking, "20 mm more lagging on the tank").better(), 1e-9);
        assertTrue(effect(ranking, "20 mm more lagging on the tank").better() > 0);
        assertTrue(effect(ranking, "one more pane").better() != 0);
    }

    @Test
    void aDesignWithoutPanesGetsNone() {
        Design dark = DesignJson.read(DesignJson.write(BOTHY).replaceAll("(?s)\"window\"\\s*:\\s*\\{[^}]*\\},", ""));
        assertTrue(dark.window().isEmpty());
        assertTrue(Ranking.of(dark, Figure.flow(40), ProgressListener.NONE)
                .result()
                .untried()
                .contains("one more pane"));
    }

    @Test
    void aStepThatCannotBeDoneIsNamed() {
        Design high = BOTHY.withLoopTube(largest());
        Ranking ranking =
                Ranking.of(high, Figure.flow(40), ProgressListener.NONE).result();
        assertTrue(
                ranking.untried().contains("every pipe one size larger"),
                ranking.untried().toString());
    }

    @Test
    void aStoppedRankingKeepsWhatWasTried() {
        ProgressListener stops = new StopsAfter(2);
        Outcome<Ranking> outcome = Ranking.of(BOTHY, Figure.flow(40), stops);
        Outcome.Cancelled<?> cancelled = assertInstanceOf(Outcome.Cancelled.class, outcome);
        assertEquals(2, cancelled.done());
        assertEquals(
                2,
                outcome.result().effects().size() + outcome.result().untried().size());
    }

    @Test
    void aDesignWithoutTheFigureCountsWhatAStepBrings() {
        Design weak = BOTHY.withLoopTube("EN1057 15x0.7").withCoilHeatKW(20);
        assertTrue(Figure.flow(40).of(weak).isEmpty());
        List<PracticalStep> larger = PracticalStep.all().stream()
                .filter(step -> step.words().equals("every pipe one size larger"))
                .toList();
        Ranking ranking =
                Ranking.of(weak, Figure.flow(40), larger, ProgressListener.NONE).result();
        assertFalse(ranking.now().isPresent());
        ranking.effects().forEach(effect -> assertEquals(effect.value(), effect.better()));
    }

    @Test
    void theNextSizeIsOfTheSameKind() {
        assertEquals(
                Optional.of("EN1057 28"),
                TubeSizes.nextLarger("EN1057 22x0.9").map(tube -> tube.name().substring(0, 9)));
        assertTrue(TubeSizes.like("B88 L 3/4").stream()
                .allMatch(tube -> tube.name().startsWith("B88 L ")));
    }

    private static String largest() {
        var sizes = TubeSizes.like("EN1057 22x0.9");
        return sizes.get(sizes.size() - 1).name();
    }

    private static Ranking finished(Figure figure) {
        Outcome<Ranking> outcome = Ranking.of(BOTHY, figure, ProgressListener.NONE);
        assertInstanceOf(Outcome.Finished.class, outcome);
        return outcome.result();
    }

    private static Ranking.Effect effect(Ranking ranking, String words) {
        return ranking.effects().stream()
                .filter(effect -> effect.words().equals(words))
                .findFirst()
                .orElseThrow();
    }

    private static double flow(Design design) {
        return design.circuit(40).search().forward().orElseThrow().flowKgPerS();
    }
}
