package loftcoil.engine.drift;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Each kind of work makes no more than it did: a slowdown of kind fails here on any computer, however busy. To keep a meant one:
 * {@code mvn -o test -pl engine -Dtest=WorkDoneTest -DargLine=-Dloftcoil.keep=true} writes the file and fails.
 */
class WorkDoneTest {

    private static final Path KEPT = Path.of("src/test/resources/loftcoil/engine/drift/work-done.txt");

    /** Between two Java releases the same work makes up to some tenth more or less; a table searched twice makes twice as much. */
    private static final double MOST_TIMES = 1.4;

    @TempDir
    private Path folder;

    @Test
    void noKindOfWorkHasGrown() throws Exception {
        List<String> now = counted();
        if (Boolean.getBoolean("loftcoil.keep")) {
            Files.write(KEPT, now);
            fail("kept as it is now");
        }
        Map<String, Long> kept = read(Files.readAllLines(KEPT));
        Map<String, Long> counts = read(now);
        assertEquals(kept.keySet(), counts.keySet());
        assertTrue(kept.values().stream().allMatch(kb -> kb > 0), kept.toString());
        List<String> grown = counts.entrySet().stream()
                .filter(entry -> entry.getValue() > MOST_TIMES * kept.get(entry.getKey()))
                .map(entry ->
                        entry.getKey() + ": " + kept.get(entry.getKey()) + " kB kept, " + entry.getValue() + " kB now")
                .toList();
        assertEquals(List.of(), grown);
    }

    private List<String> counted() throws IOException, InterruptedException {
        Path told = folder.resolve("told.txt");
        int status = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Xmx512m",
                        "-XX:+UseSerialGC",
                        "-XX:TieredStopAtLevel=1",
                        "-cp",
                        System.getProperty("java.class.path"),
                        WorkDone.class.getName())
                .redirectErrorStream(true)
                .redirectOutput(told.toFile())
                .start()
                .waitFor();
        List<String> lines =
                Files.readString(told, StandardCharsets.UTF_8).lines().toList();
        assertEquals(0, status, lines.toString());
        return lines;
    }

    private static Map<String, Long> read(List<String> lines) {
        Map<String, Long> counts = new LinkedHashMap<>();
        for (String line : lines) {
            int colon = line.indexOf(':');
            counts.put(
                    line.substring(0, colon),
                    Long.parseLong(line.substring(colon + 1).strip()));
        }
        return counts;
    }
}
