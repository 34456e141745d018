package loftcoil.runner.progress;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

class TrailTest {

    private static Trail.Entry entry(Trail.How how, String state) {
        return new Trail.Entry("2031-05-04T17:20:05", how, "{\n  \"name\" : \"" + state + "\"\n}\n");
    }

    private static Trail undone(Trail trail) {
        return trail.with(new Trail.Entry(
                "",
                Trail.How.UNDONE,
                trail.entries().get(trail.toUndo().orElseThrow()).state()));
    }

    @Test
    void theOldestAreFoldedAndUndoEndsThere() {
        Trail trail = Trail.of(entry(Trail.How.BEGUN, "0"));
        for (int i = 1; i <= Trail.MOST + 5; i++) {
            trail = trail.with(entry(Trail.How.DECIDED, Integer.toString(i)));
        }
        assertEquals(6, trail.folded());
        assertEquals(Trail.MOST, trail.entries().size());
        int undos = 0;
        while (trail.toUndo().isPresent()) {
            trail = undone(trail);
            undos++;
            assertTrue(undos <= Trail.MOST, "undo never ends");
        }
        assertEquals(Trail.MOST, trail.entries().size());
        // Each undoing is an entry too, so it folds one of the oldest: half of the states can be reached.
        assertEquals(Trail.MOST / 2, undos);
        assertTrue(trail.toRedo().isPresent());
    }

    @Test
    void aNewChangeEndsWhatCouldBeMadeAgain() {
        Trail trail = Trail.of(entry(Trail.How.BEGUN, "0")).with(entry(Trail.How.DECIDED, "1"));
        trail = undone(trail);
        assertEquals(OptionalInt.of(1), trail.toRedo());
        assertEquals(OptionalInt.empty(), trail.toUndo());
        trail = trail.with(entry(Trail.How.MEASURED, "2"));
        assertEquals(OptionalInt.empty(), trail.toRedo());
        assertEquals(OptionalInt.of(0), trail.toUndo());
    }

    @Test
    void aTrailIsWrittenAndRead() {
        Trail trail = Trail.of(entry(Trail.How.BEGUN, "0"));
        for (Trail.How how : Trail.How.values()) {
            trail = trail.with(entry(how, how.name()));
        }
        String json = new String(TrailJson.write(trail), StandardCharsets.UTF_8);
        assertEquals(Optional.of(trail), TrailJson.read(json));
        for (String none : new String[] {
            "",
            "null",
            "{}",
            "[]",
            "{\"version\": 1}",
            json.replace("\"version\":1", "\"version\":2"),
            json.replace("begun", "sung")
        }) {
            assertEquals(Optional.empty(), TrailJson.read(none), none);
        }
    }
}
