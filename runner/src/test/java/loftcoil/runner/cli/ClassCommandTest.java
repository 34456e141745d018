package loftcoil.runner.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import loftcoil.runner.progress.Progress;
import loftcoil.runner.progress.ProgressFile;
import loftcoil.runner.show.TryCourse;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

class ClassCommandTest {

    @TempDir
    private Path folder;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int run(String... args) {
        CommandLine commandLine = Loftcoil.commandLine();
        commandLine.setOut(new PrintWriter(out, true));
        commandLine.setErr(new PrintWriter(err, true));
        List<String> all = new ArrayList<>(List.of("class"));
        all.addAll(List.of(args));
        all.addAll(List.of(
                "--lessons",
                TryCourse.folder().resolve("lessons").toString(),
                "--exercises",
                TryCourse.folder().resolve("exercises").toString()));
        return commandLine.execute(all.toArray(String[]::new));
    }

    @Test
    void pageAndTableAreWrittenAndTheSummaryIsSaid() throws IOException {
        Path learners = folder.resolve("class");
        try (ProgressFile file = ProgressFile.open(learners.resolve("Zoë"))) {
            file.keep(Progress.start(4).withLesson("01-try"));
        }
        Files.writeString(learners.resolve("Bad.json"), "{");
        Path page = folder.resolve("summary.html");
        Path table = folder.resolve("summary.csv");

        assertEquals(0, run(learners.toString(), "--to", page.toString(), "--csv", table.toString()), err.toString());

        assertTrue(Files.readString(page).contains("Zoë"));
        assertTrue(Files.readString(table).contains("Zoë,01-try,"));
        assertTrue(out.toString().matches("(?s).*Zoë: 0 of \\d+ done.*"), out.toString());
        assertTrue(out.toString().contains("Not read: Bad: it cannot be read at line 1"), out.toString());
    }

    @Test
    void anEmptyFolderIsNoFault() {
        Path page = folder.resolve("summary.html");
        assertEquals(0, run(folder.toString(), "--to", page.toString()), err.toString());
        assertTrue(Files.exists(page));
        assertTrue(out.toString().contains("0 learners."), out.toString());
    }

    @Test
    void aFolderThatIsNoneAndATargetOfAnotherKindAreRefused() {
        assertEquals(2, run(folder.resolve("none").toString()));
        assertTrue(err.toString().contains("no such folder"), err.toString());
        Path wrong = folder.resolve("progress.json");
        assertEquals(2, run(folder.toString(), "--to", wrong.toString()));
        assertTrue(err.toString().contains("ends in .html"), err.toString());
        assertFalse(Files.exists(wrong));
        assertEquals(
                2,
                run(folder.toString(), "--csv", folder.resolve("no/such/x.csv").toString()));
        assertTrue(err.toString().contains("cannot be written"), err.toString());
    }

    /** One line that is written over; gone at the end, and never there where the error stream is no terminal. */
    @Test
    void howFarItIsIsToldWhereThatIsSeenAndNowhereElse() throws IOException {
        for (String learner : List.of("Ann", "Ben", "Cleo")) {
            try (ProgressFile file = ProgressFile.open(folder.resolve(learner))) {
                file.keep(Progress.start(4).withLesson("01-try"));
            }
        }

        assertEquals(0, run(folder.toString(), "--no-progress"), err.toString());
        assertEquals("", err.toString());

        assertEquals(0, run(folder.toString(), "--progress"), err.toString());
        assertTrue(err.toString().contains("\rLooking at learner 2 of 3"), err.toString());
        assertTrue(err.toString().contains("\rLooking at learner 3 of 3"), err.toString());
        assertTrue(err.toString().contains("\rReading the lessons"), err.toString());
        assertTrue(err.toString().endsWith(" \r"), "the line is taken away");
        assertFalse(err.toString().contains("\n"), "it is one line");
        assertFalse(out.toString().contains("Looking"), out.toString());
    }

    @Test
    void aRefusalBeginsOnACleanLine() {
        CommandLine commandLine = Loftcoil.commandLine().setErr(new PrintWriter(err, true));
        String none = folder.resolve("none").toString();

        assertEquals(
                2,
                commandLine.execute("class", folder.toString(), "--progress", "--lessons", none, "--exercises", none));

        assertTrue(err.toString().contains("\rReading the lessons\r"), err.toString());
        String last = err.toString().substring(err.toString().lastIndexOf('\r') + 1);
        assertTrue(last.contains("none") && !last.startsWith(" "), err.toString());
    }
}
