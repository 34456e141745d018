package loftcoil.runner.show;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.Example;
import loftcoil.runner.progress.ProgressFile;
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
        store.becomes(HARMLESS, loftcoil.runner.progress.Trail.How.DECIDED);
        desk.start();
        View.Clears found = ended();
        assertEquals(new View.Clears(View.ClearState.DONE, 0, 0, List.of(), ""), found);
        assertEquals(found, desk.start(), "a search that is done is not begun again");
        assertEquals(HARMLESS, desk.found().orElseThrow().design());
        store.becomes(HARMLESS.withTankBaseM(2.5), loftcoil.runner.progress.Trail.How.DECIDED);
        assertEquals(View.ClearState.NONE, desk.view().state());
        assertTrue(desk.found().isEmpty());
    }

    @Test
    void aSearchThatIsStoppedSaysSoAndCanBeBegunAgain() throws InterruptedException {
        desk.start();
        assertEquals(View.ClearState.STOPPED, desk.stop().state());
        View.Clears stopped = ended();
        assertEquals(View.ClearState.STOPPED, stopped.state());
        store.becomes(HARMLESS, loftcoil.runner.progress.Trail.How.DECIDED);
        desk.start();
        assertEquals(View.ClearState.DONE, ended().state());
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
