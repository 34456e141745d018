package loftcoil.engine.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import loftcoil.engine.build.BuildSheet;
import loftcoil.engine.design.Changes;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.Example;
import loftcoil.engine.study.NamedValue;
import loftcoil.engine.study.ProgressListener;
import loftcoil.engine.study.Rebuild;
import loftcoil.engine.study.SearchOutcome;
import loftcoil.engine.watch.Watch;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** A whole sheet tells how far it is, can be ended at each stage, and comes to the same however it is watched. */
class WatchedSheetTest {

    /** Its heat has a range, so that there are three years; of a height that no other test asks for, since what is known already is not worked out again. */
    private static Design design(double baseM) {
        return Changes.apply(Example.orchardBothy().withTankBaseM(baseM), "coil.heat", "worked out from the fire");
    }

    private static final class Noted implements Watch {

        private final List<Integer> percents = new ArrayList<>();
        private final Set<Stage> stages = EnumSet.noneOf(Stage.class);

        @Override
        public void at(Stage stage, int done, int of) {
            percents.add(stage.percent(done, of));
            stages.add(stage);
        }
    }

    @Test
    void everyStageIsToldAndTheShareNeverGoesBack() {
        Noted noted = new Noted();
        Design design = design(2.311);
        Sheet watched = Sheet.whole(design, Sheet.USUAL_TANK_C, noted);

        assertEquals(EnumSet.allOf(Watch.Stage.class), noted.stages);
        assertEquals(noted.percents.stream().sorted().toList(), noted.percents);
        assertEquals(watched, Sheet.whole(design, Sheet.USUAL_TANK_C));
        assertTrue(noted.percents.size() > 40, noted.percents.toString());
    }

    @ParameterizedTest
    @EnumSource(Watch.Stage.class)
    void itCanBeEndedAtEachStageAndBegunAgain(Watch.Stage last) {
        Design design = design(2.312 + List.of(Watch.Stage.values()).indexOf(last) / 1000.0);
        Watch.StoppedException stopped = assertThrows(
                Watch.StoppedException.class,
                () -> Sheet.whole(design, Sheet.USUAL_TANK_C, new Watch() {
                    private boolean there;

                    @Override
                    public void pass(Stage stage, int done, int of) {
                        there = stage == last;
                        Watch.super.pass(stage, done, of);
                    }

                    @Override
                    public boolean cancelled() {
                        return there;
                    }
                }));
        assertTrue(stopped.getMessage().contains(last.words()), stopped.getMessage());
        assertTrue(Sheet.whole(design, Sheet.USUAL_TANK_C).year().isPresent());
    }

    @Test
    void aRebuildStoppedWithinItsFirstYearIsOneWithoutYears() {
        Design design = design(2.331);
        SearchOutcome<Rebuild> ended =
                Rebuild.whole(design, List.of(new NamedValue("loop.laggingMm", "50")), new ProgressListener() {
                    @Override
                    public boolean cancelled() {
                        return true;
                    }
                });
        assertInstanceOf(SearchOutcome.Cancelled.class, ended);
        assertFalse(ended.result()
                .together()
                .comparison()
                .orElseThrow()
                .after()
                .year()
                .isPresent());
    }

    /** Half a sheet may never read as if nothing were known: nobody has looked at year and starts. */
    @Test
    void halfASheetIsNeverOneToBuildBy() {
        Design own = Example.orchardBothy();
        BuildSheet half = BuildSheet.of(Sheet.of(own));
        assertFalse(half.buildable());
        if (half.reasons().isEmpty()) {
            assertTrue(
                    half.verdict().metric().contains("half of the sheet"),
                    half.verdict().metric());
        }
        assertFalse(
                half.verdict().metric().contains("no danger is known"),
                half.verdict().metric());
    }
}
