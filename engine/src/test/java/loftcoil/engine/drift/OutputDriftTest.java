package loftcoil.engine.drift;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import loftcoil.engine.design.Design;
import loftcoil.engine.sheet.Sheet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Our own earlier output of a dozen designs: sheet, text, build sheet, comparison. A difference is not wrong, but has to be meant.
 * To keep a meant one: {@code mvn -o test -pl engine -Dtest=OutputDriftTest -DargLine=-Dloftcoil.keep=true} writes the files and
 * fails, so that no run can keep and pass at once; the commit says why they changed.
 */
class OutputDriftTest {

    private static final Map<String, Design> DESIGNS = KeptDesigns.all();
    private static final Sheet BOTHY = Sheet.whole(DESIGNS.get("bothy"), Sheet.USUAL_TANK_C);
    private static final Path KEPT = Path.of("src/test/resources/loftcoil/engine/drift");
    private static final double SHARE = 1e-6;
    private static final double NOUGHT = 1e-9;
    private static final Pattern NUMBER = Pattern.compile("-?\\d+(\\.\\d+)?([eE]-?\\d+)?");
    private static final Pattern EXPONENT = Pattern.compile("[0-9][eE][-+]?[0-9]");
    private static final int MOST_SHOWN = 40;

    static Stream<String> names() {
        return DESIGNS.keySet().stream();
    }

    @Test
    void thereAreEnoughDesigns() {
        assertTrue(DESIGNS.size() >= 11, DESIGNS.keySet().toString());
    }

    @ParameterizedTest
    @MethodSource("names")
    void theOutputIsTheKeptOne(String name) throws IOException {
        List<String> now = Output.of(DESIGNS.get(name), BOTHY);
        assertEquals(
                List.of(),
                now.stream()
                        .filter(line -> line.startsWith("text ")
                                && EXPONENT.matcher(line).find())
                        .toList(),
                "for a person");
        if (Boolean.getBoolean("loftcoil.keep")) {
            Files.write(KEPT.resolve(name + ".txt"), now);
            fail(name + ": kept as it is now");
        }
        assertEquals(List.of(), differences(kept(name), now));
    }

    private static List<String> kept(String name) throws IOException {
        try (InputStream in = OutputDriftTest.class.getResourceAsStream(name + ".txt")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().toList();
        }
    }

    private static List<String> differences(List<String> kept, List<String> now) {
        List<String> differences = new ArrayList<>();
        if (kept.size() != now.size()) {
            differences.add(kept.size() + " lines kept, " + now.size() + " now");
        }
        for (int i = 0; i < Math.min(kept.size(), now.size()) && differences.size() < MOST_SHOWN; i++) {
            if (!alike(kept.get(i), now.get(i))) {
                differences.add("kept: " + kept.get(i) + "\nnow:  " + now.get(i));
            }
        }
        return differences;
    }

    /** The same words, and each number within a millionth. */
    private static boolean alike(String kept, String now) {
        if (kept.equals(now)) {
            return true;
        }
        Matcher before = NUMBER.matcher(kept);
        Matcher after = NUMBER.matcher(now);
        if (!before.replaceAll("#").equals(after.replaceAll("#"))) {
            return false;
        }
        before.reset();
        after.reset();
        while (before.find() && after.find()) {
            double one = Double.parseDouble(before.group());
            double other = Double.parseDouble(after.group());
            if (!(Math.abs(one - other) <= NOUGHT + SHARE * Math.max(Math.abs(one), Math.abs(other)))) {
                return false;
            }
        }
        return true;
    }
}
