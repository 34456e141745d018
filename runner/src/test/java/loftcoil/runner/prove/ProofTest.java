package loftcoil.runner.prove;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import loftcoil.runner.course.CourseReader;
import loftcoil.runner.session.SharedSession;
import loftcoil.runner.show.TryCourse;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Each test breaks one thing in a course that holds, and wants that one fault back. */
class ProofTest {

    @TempDir
    private Path course;

    @BeforeEach
    void copyCourse() throws IOException {
        Path from = TryCourse.folder();
        try (Stream<Path> files = Files.walk(from)) {
            for (Path file : files.toList()) {
                Path to = course.resolve(from.relativize(file).toString());
                if (Files.isDirectory(file)) {
                    Files.createDirectories(to);
                } else {
                    Files.copy(file, to);
                }
            }
        }
    }

    private void replace(String file, String what, String with) throws IOException {
        String text = Files.readString(course.resolve(file));
        assertTrue(text.contains(what), what);
        Files.writeString(course.resolve(file), text.replace(what, with));
    }

    private List<String> faults() {
        return new Proof(
                        CourseReader.read(course.resolve("lessons"), course.resolve("exercises")),
                        SharedSession::lent,
                        List.of(1L))
                .run(proof -> {}).stream()
                        .flatMap(proof -> proof.faults().stream())
                        .toList();
    }

    private void onlyFault(String... parts) {
        List<String> faults = faults();
        assertEquals(1, faults.size(), faults.toString());
        for (String part : parts) {
            assertTrue(faults.get(0).contains(part), faults.get(0));
        }
    }

    @Test
    void aWrongWorkedSolutionIsFound() throws IOException {
        replace("exercises/01-try/head.json", "992.22", "995.22");

        onlyFault("01-try/head", "the worked solution gives");
    }

    @Test
    void aMistakeThatWouldPassAsRightIsFound() throws IOException {
        replace("exercises/01-try/head.json", "\"java\": \"heightM *", "\"java\": \"9.8 * heightM *");

        onlyFault("01-try/head", "would pass as right");
    }

    @Test
    void aSnippetThatDoesNotCompileIsFoundAtItsLineOfTheLesson() throws IOException {
        replace("lessons/02-more.md", "1 + 1", "1 + nothing");

        onlyFault("snippet other", "line 10 of the lesson");
    }

    @Test
    void aSnippetThatThrowsAtTheEndOfItsDragIsFound() throws IOException {
        replace(
                "lessons/01-try.md",
                "System.out.println(",
                "if (tankBaseM > 2.9) throw new RuntimeException(\"too high\");\nSystem.out.println(");

        onlyFault("snippet lift with tankBaseM = 3.0", "too high");
    }

    @Test
    void aReferenceThatIsNoNumberIsFound() throws IOException {
        replace("exercises/02-more/twice.json", "\"java\": \"42\"", "\"java\": \"0.0 / 0.0\"");

        onlyFault("02-more/twice");
    }

    @Test
    void aDecisionOfAnUnknownChangeIsFound() throws IOException {
        replace("exercises/01-try/tank.json", "tank.baseM", "tank.colour");

        onlyFault("01-try/tank", "tank.colour", "allowed");
    }

    @Test
    void aSliderThatStartsAtAnUnknownDecisionIsFound() throws IOException {
        replace("lessons/01-try.md", "decided=tank.baseM", "decided=tank.colour");

        onlyFault("snippet lift", "tank.colour", "allowed");
    }

    @Test
    void aSliderThatEndsAtAnUnknownFieldIsFound() throws IOException {
        replace("lessons/01-try.md", "decided=tank.baseM", "within=tank.colour");

        onlyFault("snippet lift", "within=tank.colour", "allowed");
    }

    @Test
    void aProofWithoutSeedsIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> new Proof(TryCourse.read(), SharedSession::lent, List.of()));
    }
}
