package loftcoil.runner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import loftcoil.engine.design.DesignJson;
import loftcoil.engine.design.Example;
import loftcoil.runner.exercise.ExerciseReader;
import loftcoil.runner.exercise.Mend;
import loftcoil.runner.session.DesignBinding;
import loftcoil.runner.session.Outcome;
import loftcoil.runner.session.Session;
import loftcoil.runner.session.SharedSession;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What the README shows is what holds. */
class ReadmeTest {

    private static final Pattern JAVA = Pattern.compile("^```java\\n(.*?)^```$", Pattern.DOTALL | Pattern.MULTILINE);

    /** What is shown as it is typed, fenced, indented or within a line: a link in it belongs to the file it would stand in. */
    private static final Pattern SHOWN =
            Pattern.compile("^```.*?^```$|^    [^\\n]*$|`[^`\\n]+`", Pattern.DOTALL | Pattern.MULTILINE);

    private static String readme() throws IOException {
        return Files.readString(Path.of("..", "README.md"));
    }

    static List<Path> documents() throws IOException {
        Path top = Path.of("..");
        List<Path> found = new ArrayList<>(List.of(top.resolve("README.md"), top.resolve("DEVELOPERS.md")));
        for (Path folder : List.of(top.resolve("engine/models"), top.resolve("lessons"))) {
            try (Stream<Path> files = Files.list(folder)) {
                files.filter(file -> file.toString().endsWith(".md")).sorted().forEach(found::add);
            }
        }
        return found;
    }

    @ParameterizedTest
    @MethodSource("documents")
    void whatADocumentLinksToIsThere(Path document) throws IOException {
        List<String> gone = Pattern.compile("\\]\\(([^)#\\s]+)[^)]*\\)")
                .matcher(SHOWN.matcher(Files.readString(document)).replaceAll(""))
                .results()
                .map(link -> link.group(1))
                .filter(link -> !link.contains("://"))
                .filter(link -> !Files.exists(document.resolveSibling(link)))
                .toList();
        assertEquals(List.of(), gone);
    }

    @Test
    void itsJavaRunsAndDraws() throws IOException {
        List<String> shown =
                JAVA.matcher(readme()).results().map(found -> found.group(1)).toList();
        assertEquals(1, shown.size());
        try (Session session = SharedSession.lent()) {
            DesignBinding.bind(session, DesignJson.write(Example.orchardBothy()));

            Outcome outcome = session.run("readme", shown.get(0));

            assertInstanceOf(Outcome.Done.class, outcome, outcome.toString());
            assertEquals(1, outcome.trace().charts().size());
        }
    }

    @Test
    void itsFaultySystemIsOneThatCanBeRead() throws IOException {
        List<String> shown = Pattern.compile("^```json\\n(.*?)^```$", Pattern.DOTALL | Pattern.MULTILINE)
                .matcher(readme())
                .results()
                .map(found -> found.group(1))
                .filter(json -> json.contains("\"mend\""))
                .toList();
        assertEquals(1, shown.size());
        Mend mend = assertInstanceOf(Mend.class, ExerciseReader.read("readme", "README.md", shown.get(0)));
        assertEquals("A low tank", mend.faulty().design().name());
    }

    @Test
    void itRunsWithExactlyTwoCommands() throws IOException {
        String section = readme().replaceAll("(?s).*## Run it\\n(.*?)\\n## .*", "$1");

        List<String> commands = Pattern.compile("^    (mvn .*)$", Pattern.MULTILINE)
                .matcher(section)
                .results()
                .map((MatchResult found) -> found.group(1))
                .toList();

        assertEquals(List.of("mvn -q compile exec:java", "mvn -B verify"), commands);
    }
}
