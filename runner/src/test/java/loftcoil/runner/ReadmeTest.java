package loftcoil.runner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import loftcoil.engine.design.DesignJson;
import loftcoil.engine.design.Example;
import loftcoil.runner.exercise.ExerciseReader;
import loftcoil.runner.exercise.Mend;
import loftcoil.runner.session.DesignBinding;
import loftcoil.runner.session.Outcome;
import loftcoil.runner.session.Session;
import loftcoil.runner.session.SharedSession;
import org.junit.jupiter.api.Test;

/** What the README shows is what holds. */
class ReadmeTest {

    private static final Pattern JAVA = Pattern.compile("^```java\\n(.*?)^```$", Pattern.DOTALL | Pattern.MULTILINE);

    private static String readme() throws IOException {
        return Files.readString(Path.of("..", "README.md"));
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
