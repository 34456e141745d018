package loftcoil.runner.progress;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** Kills a writing process again and again; what is on the disk is whole every time. */
class SuddenEndTest {

    @TempDir
    Path temp;

    @Test
    @Timeout(value = 20, unit = TimeUnit.MINUTES)
    void aKillAtAnyMomentLeavesAWholeFile() throws IOException, InterruptedException {
        kill(4);
    }

    @Test
    @Tag("thorough")
    @Timeout(value = 20, unit = TimeUnit.MINUTES)
    void manyKillsAtAnyMomentLeaveAWholeFile() throws IOException, InterruptedException {
        kill(12);
    }

    private void kill(int times) throws IOException, InterruptedException {
        Random random = new Random(20);
        Set<Long> seen = new HashSet<>();
        long last = 0;
        for (int i = 0; i < times; i++) {
            Process writer = writer(last + 1);
            try {
                awaitWrites(writer);
                FolderException refused = assertThrows(FolderException.class, () -> ProgressFile.open(temp));
                assertEquals(FolderException.Why.IN_USE, refused.why());
                TimeUnit.MICROSECONDS.sleep(random.nextInt(40_000));
            } finally {
                // On this system that is signal 9: no hook and no finally of the writer runs.
                writer.destroyForcibly().waitFor();
            }
            last = check(last);
            seen.add(last);
        }
        assertEquals(times, seen.size(), "each writer got further than the one before");
        try (var files = Files.list(temp)) {
            List<String> aside = files.map(file -> file.getFileName().toString())
                    .filter(name -> name.contains("damaged"))
                    .toList();
            assertEquals(List.of(), aside);
        }
    }

    private long check(long last) {
        try (ProgressFile file = ProgressFile.open(temp)) {
            Progress progress = file.progress(-1);
            assertEquals(List.of(), file.notices());
            assertTrue(progress.seed() > last, () -> progress.seed() + " after " + last);
            String text = progress.work("01-warm").snippets().get("s");
            char letter = (char) ('a' + progress.seed() % 26);
            assertEquals(String.valueOf(letter).repeat(KeepsWriting.LENGTH), text);
            String design = file.design().orElseThrow();
            assertEquals(String.valueOf(design.charAt(0)).repeat(KeepsWriting.LENGTH), design);
            return progress.seed();
        }
    }

    private Process writer(long from) throws IOException {
        return new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-XX:+UseSerialGC",
                        "-cp",
                        System.getProperty("java.class.path"),
                        KeepsWriting.class.getName(),
                        temp.toString(),
                        Long.toString(from))
                .redirectErrorStream(true)
                .redirectOutput(
                        temp.resolveSibling(temp.getFileName() + "-writer.txt").toFile())
                .start();
    }

    /** Waits until the writer has replaced the design, the second file of each round. */
    private void awaitWrites(Process writer) throws IOException, InterruptedException {
        long before = replaced();
        while (writer.isAlive() && replaced() == before) {
            TimeUnit.MILLISECONDS.sleep(5);
        }
        assertTrue(writer.isAlive(), "the writer ended by itself");
    }

    private long replaced() throws IOException {
        Path design = temp.resolve("design.json");
        return Files.exists(design) ? Files.getLastModifiedTime(design).to(TimeUnit.NANOSECONDS) : 0;
    }
}
