package loftcoil.runner.show;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.function.BooleanSupplier;
import loftcoil.engine.design.Changes;
import loftcoil.runner.progress.ProgressFile;
import loftcoil.runner.progress.Trail;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The build sheet worked out in the background: how far it is, stopped, begun again, refused. */
class BuildDeskTest {

    @TempDir
    private Path folder;

    private LearnerStore store;
    private WholeSheets sheets;
    private BuildDesk desk;

    @BeforeEach
    void open() {
        store = new LearnerStore(ProgressFile.open(folder), 7);
        sheets = new WholeSheets(store);
        desk = new BuildDesk(store, sheets);
    }

    @AfterEach
    void close() {
        desk.close();
        store.close();
    }

    /** Ends when it happens; the limit only ends a hang. */
    private static void until(BooleanSupplier happened) throws InterruptedException {
        for (int i = 0; i < 6000 && !happened.getAsBoolean(); i++) {
            Thread.sleep(10);
        }
        assertTrue(happened.getAsBoolean());
    }

    @Test
    void itIsWorkedOutOnceAndThenThere() throws InterruptedException {
        assertEquals(View.BuildState.NONE, desk.view().state());
        desk.start();
        until(() -> desk.view().state() == View.BuildState.DONE);
        assertEquals(View.BuildState.DONE, desk.start().state());
        assertTrue(sheets.build().sheet().year().isPresent());
    }

    @Test
    void stoppedItSaysSoAndCanBeBegunAgain() throws InterruptedException {
        store.becomes(Changes.apply(store.design(), "tank.baseM", "2.413"), Trail.How.DECIDED);
        synchronized (sheets) {
            // Whoever holds the sheets keeps it from going on, so that the stop comes before its end.
            assertEquals(View.BuildState.WORKING, desk.start().state());
            assertTrue(
                    desk.view().words().startsWith("Working out"), desk.view().words());
            assertEquals(View.BuildState.STOPPED, desk.stop().state());
        }
        desk.start();
        until(() -> desk.view().state() == View.BuildState.DONE);
    }

    @Test
    void aChangedDesignHasASheetOfItsOwn() throws InterruptedException {
        desk.start();
        until(() -> desk.view().state() == View.BuildState.DONE);
        store.becomes(Changes.apply(store.design(), "tank.baseM", "2.414"), Trail.How.DECIDED);
        assertEquals(View.BuildState.NONE, desk.view().state());
    }

    @Test
    void aYearThatCannotBeIsToldAndHalfOfTheSheetIsThere() throws InterruptedException {
        store.becomes(Changes.apply(store.design(), "site.latitudeDeg", "-52"), Trail.How.DECIDED);
        desk.start();
        until(() -> desk.view().state() == View.BuildState.REFUSED);
        assertTrue(
                desk.view().words().startsWith("The year could not be judged: "),
                desk.view().words());
        assertTrue(desk.half().cuts().pieces().size() > 3);
    }
}
