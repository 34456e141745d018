package loftcoil.runner.show;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.Example;
import loftcoil.runner.progress.ProgressFile;
import loftcoil.runner.progress.Trail;
import loftcoil.runner.session.SharedSession;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ClearsDeskTest {

    /** No fire and no hot tap: judged in a moment, and nothing to clear. */
    private static final Design HARMLESS =
            Example.orchardBothy().withCoilHeatKW(0).withTapMixer("set to 45 °C");

    @TempDir
    private Path folder = Path.of("");

    private LearnerStore store;
    private ClearsDesk desk;

    @BeforeEach
    void open() {
        store = new LearnerStore(ProgressFile.open(folder), 1);
        desk = new ClearsDesk(store);
    }

    @AfterEach
    void close() {
        desk.close();
        store.close();
    }

    @Test
    void untilSomebodySearchesItSaysSo() {
        assertEquals(View.ClearState.NONE, desk.view().state());
        assertEquals(
                "What would clear it has not been searched yet.", desk.view().words());
        assertTrue(desk.found().isEmpty());
    }

    @Test
    void whatWasFoundIsOfOneDesignAndOfNoOther() throws InterruptedException {
        store.becomes(HARMLESS, Trail.How.DECIDED);
        desk.start();
        View.Clears found = ended();
        assertEquals(new View.Clears(View.ClearState.DONE, 0, 0, List.of(), ""), found);
        assertEquals(found, desk.start(), "a search that is done is not begun again");
        assertEquals(HARMLESS, desk.found().orElseThrow().design());
        store.becomes(HARMLESS.withTankBaseM(2.5), Trail.How.DECIDED);
        assertEquals(View.ClearState.NONE, desk.view().state());
        assertTrue(desk.found().isEmpty());
    }

    @Test
    void aSearchThatIsStoppedSaysSoAndCanBeBegunAgain() throws InterruptedException {
        desk.start();
        assertEquals(View.ClearState.STOPPED, desk.stop().state());
        View.Clears stopped = ended();
        assertEquals(View.ClearState.STOPPED, stopped.state());
        store.becomes(HARMLESS, Trail.How.DECIDED);
        desk.start();
        assertEquals(View.ClearState.DONE, ended().state());
    }

    /** A tap without a mixing valve scalds; nothing else hurts, so that the search is short. */
    @Test
    void whatClearsADangerIsTakenIntoTheDesignAndCanBeUndone() throws InterruptedException {
        store.becomes(Example.orchardBothy().withCoilHeatKW(0), Trail.How.DECIDED);
        store.close();
        desk.close();
        try (CourseApp bench = CourseApp.open(TryCourse.read(), ProgressFile.open(folder), SharedSession::lent, 7)) {
            View.Clears clears = bench.searchClears();
            while (clears.state() == View.ClearState.SEARCHING) {
                Thread.sleep(20);
                clears = bench.clears();
            }
            View.ClearedDanger scald = clears.dangers().get(0);
            String before = bench.rebuild().own().json();

            View.Followed taken = bench.follow(scald.code(), 0);

            assertTrue(taken.words().contains(scald.ways().get(0)), taken.words());
            assertTrue(
                    bench.effect().settled().stream()
                            .anyMatch(gone -> gone.code().equals(scald.code())),
                    bench.effect().toString());
            assertEquals(bench.effect().number(), taken.effect().number());
            assertEquals(View.ClearState.NONE, bench.clears().state(), "it is another design now");
            assertThrows(UnknownNameException.class, () -> bench.follow(scald.code(), 0));
            assertEquals(
                    "taken in to clear a danger",
                    bench.designs().shelf().history().moments().get(0).how());
            bench.designs().undo();
            assertEquals(before, bench.rebuild().own().json());
        }
    }

    private View.Clears ended() throws InterruptedException {
        View.Clears now = desk.view();
        while (now.state() == View.ClearState.SEARCHING) {
            Thread.sleep(20);
            now = desk.view();
        }
        return now;
    }
}
