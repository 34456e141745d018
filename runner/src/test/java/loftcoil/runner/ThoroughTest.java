package loftcoil.runner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What the usual run leaves out is run by the other and is listed. */
class ThoroughTest {

    private static final Path ROOT = Path.of("..");
    private static final Pattern TAG = Pattern.compile("^\\s*@Tag\\((.*)\\)$", Pattern.MULTILINE);

    /** The tags of all tests by class. */
    private static Map<String, List<String>> tags() throws IOException {
        Map<String, List<String>> found = new TreeMap<>();
        for (String module : List.of("engine", "runner")) {
            try (Stream<Path> files = Files.walk(ROOT.resolve(module).resolve("src/test/java"))) {
                for (Path file :
                        files.filter(path -> path.toString().endsWith(".java")).toList()) {
                    String name = file.getFileName().toString().replace(".java", "");
                    TAG.matcher(Files.readString(file)).results().forEach(tag -> found.computeIfAbsent(
                                    name, key -> new ArrayList<>())
                            .add(tag.group(1)));
                }
            }
        }
        return found;
    }

    @Test
    void noTagIsMisspelt() throws IOException {
        tags().forEach((name, tags) ->
                tags.forEach(tag -> assertEquals("\"thorough\"", tag, name + ": no other tag is run by anything")));
    }

    @Test
    void eachClassWithThoroughTestsIsListedAndNoOther() throws IOException {
        String guide = Files.readString(ROOT.resolve("DEVELOPERS.md"));
        String table = guide.replaceAll("(?s).*\\| left to `thorough` \\|[^\\n]*\\n\\|[-|]+\\n(.*?)\\n\\n.*", "$1");
        List<String> listed = Pattern.compile("^\\| `(\\w+)` \\|", Pattern.MULTILINE)
                .matcher(table)
                .results()
                .map(row -> row.group(1))
                .sorted()
                .toList();
        assertEquals(List.copyOf(tags().keySet()), listed);
    }

    @Test
    void theLongCommandRunsThem() throws IOException {
        String run = Files.readString(ROOT.resolve(".ci/run"));
        assertTrue(run.lines().anyMatch("mvn -B -Pthorough test"::equals), run);
        String pom = Files.readString(ROOT.resolve("pom.xml"));
        assertTrue(pom.contains("<excludedGroups>thorough</excludedGroups>"));
        assertTrue(pom.contains("<groups>thorough</groups>"));
    }
}
