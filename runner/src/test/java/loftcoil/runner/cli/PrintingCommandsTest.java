package loftcoil.runner.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import loftcoil.engine.design.Changes;
import loftcoil.engine.design.DesignJson;
import loftcoil.engine.design.Example;
import loftcoil.runner.show.TryCourse;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import picocli.CommandLine;

/** What is written to be printed or carried away, and what is refused in plain words with exit status 2. */
class PrintingCommandsTest {

    @TempDir
    private Path folder;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();
    private Path design;

    @BeforeEach
    void writeDesign() throws IOException {
        design = Files.writeString(folder.resolve("hut.json"), DesignJson.write(Example.orchardBothy()));
    }

    private int run(String... args) {
        CommandLine commandLine = Loftcoil.commandLine();
        commandLine.setOut(new PrintWriter(out, true));
        commandLine.setErr(new PrintWriter(err, true));
        return commandLine.execute(args);
    }

    private int runWithTryCourse(String... args) {
        List<String> course = List.of(
                "--lessons", TryCourse.folder().resolve("lessons").toString(),
                "--exercises", TryCourse.folder().resolve("exercises").toString());
        return run(Stream.concat(Stream.of(args), course.stream()).toArray(String[]::new));
    }

    private Path in(String name) {
        return folder.resolve(name);
    }

    private void assertRefused(int status, String... words) {
        assertEquals(2, status, err.toString());
        for (String word : words) {
            assertTrue(err.toString().contains(word), err.toString());
        }
        assertFalse(err.toString().contains("at loftcoil"), err.toString());
        assertFalse(err.toString().contains("fault of Loftcoil"), err.toString());
    }

    @Test
    void buildWritesHtmlAndPdf() throws IOException {
        assertEquals(
                0,
                run("build", design.toString(), "--to", in("s.html").toString(), "--units", "US", "--no-clears"),
                err.toString());
        String html = Files.readString(in("s.html"));
        assertTrue(html.startsWith("<!DOCTYPE html>") && html.contains("°F"));
        assertTrue(out.toString().contains("The build sheet of 'Orchard bothy' is in"), out.toString());

        assertEquals(
                0,
                run("build", design.toString(), "--to", in("s.pdf").toString(), "--paper", "letter", "--no-clears"),
                err.toString());
        byte[] pdf = Files.readAllBytes(in("s.pdf"));
        assertEquals("%PDF-", new String(pdf, 0, 5, StandardCharsets.US_ASCII));
    }

    @Test
    void aDesignThatMustNotBeBuiltIsWrittenAndSaidSo() throws IOException {
        Files.writeString(design, DesignJson.write(Changes.apply(Example.orchardBothy(), "tank.baseM", "-1.5")));
        assertEquals(
                0, run("build", design.toString(), "--to", in("s.html").toString(), "--no-clears"), err.toString());
        assertTrue(out.toString().contains("must not be built as drawn"), out.toString());
        assertTrue(Files.readString(in("s.html")).contains("Do not build this as drawn"));
    }

    @Test
    void withoutAFileItIsTheLearnersOwnDesign() throws IOException {
        assertRefused(
                run("build", "--to", in("s.html").toString(), "--folder", folder.toString()),
                "you have no design of your own yet");
        Files.writeString(in("design.json"), DesignJson.write(Example.orchardBothy()));
        assertEquals(
                0,
                run("build", "--to", in("s.html").toString(), "--folder", folder.toString(), "--no-clears"),
                err.toString());
    }

    @ParameterizedTest
    @CsvSource({
        "--paper, b5, 'allowed: a4, letter'",
        "--paper, '', 'allowed: a4, letter'",
        "--units, imperial, 'allowed: metric, us'",
    })
    void unknownPaperAndUnitsAreRefused(String option, String value, String allowed) {
        assertRefused(run("build", design.toString(), "--to", in("s.pdf").toString(), option, value), option, allowed);
        assertFalse(Files.exists(in("s.pdf")));
    }

    @ParameterizedTest
    @CsvSource({
        "s.docx, neither .html nor .pdf",
        "none/s.pdf, its folder is missing",
        "sub.pdf, a folder",
    })
    void aTargetThatCannotBeWrittenIsRefusedBeforeAnythingIsComputed(String name, String why) throws IOException {
        Files.createDirectory(in("sub.pdf"));
        assertRefused(run("build", design.toString(), "--to", in(name).toString()), why, "allowed");
        err.getBuffer().setLength(0);
        assertRefused(runWithTryCourse("handout", "1", "--to", in(name).toString()), why, "allowed");
    }

    @Test
    void aPlaceThatTakesNoFilesIsRefusedBeforeAnythingIsRead() {
        // A file system of Linux that lets nobody make a file, whatever their rights.
        assumeTrue(Files.isDirectory(Path.of("/proc/self")));
        String nowhere = "/proc/loftcoil-sheet.html";
        for (List<String> command : List.of(
                List.of("build", in("none.json").toString(), "--to", nowhere),
                List.of("handout", "77", "--to", nowhere),
                List.of("class", in("none").toString(), "--to", nowhere),
                List.of("export", "--to", "/proc/loftcoil", "--lessons", "none", "--exercises", "none"))) {
            err.getBuffer().setLength(0);
            assertRefused(
                    run(command.toArray(String[]::new)),
                    "/proc/loftcoil",
                    "cannot be written (there is no such place)");
            assertEquals(1, err.toString().lines().count(), err.toString());
        }
    }

    @Test
    void aTargetIsAsItWasWhereTheRestIsRefused() throws IOException {
        Path kept = Files.writeString(in("kept.html"), "last year's");
        assertRefused(run("build", in("none.json").toString(), "--to", kept.toString()), "no such file");
        assertEquals("last year's", Files.readString(kept));
        assertRefused(
                run("build", in("none.json").toString(), "--to", in("new.html").toString()), "no such file");
        assertFalse(Files.exists(in("new.html")));
    }

    @Test
    void aDesignWithFaultsIsRefusedWithThePathOfEach() throws IOException {
        Files.writeString(
                design, DesignJson.write(Example.orchardBothy()).replace("\"volumeL\" : 120", "\"volumeL\" : -3"));
        assertRefused(run("build", design.toString(), "--to", in("s.pdf").toString()), "tank.volumeL");
        err.getBuffer().setLength(0);
        assertRefused(
                run("build", in("none.json").toString(), "--to", in("s.pdf").toString()), "no such file");
        assertFalse(Files.exists(in("s.pdf")));
    }

    @Test
    void aHandoutIsFoundByNumberAndItsKeyHasTheAnswers() throws IOException {
        assertEquals(
                0, runWithTryCourse("handout", "01", "--to", in("h.html").toString(), "--seed", "9"), err.toString());
        assertEquals(
                0,
                runWithTryCourse(
                        "handout", "01-try", "--key", "--to", in("k.html").toString()),
                err.toString());
        assertFalse(Files.readString(in("h.html")).contains("Times gravity."));
        assertTrue(Files.readString(in("k.html")).contains("Times gravity."));
        assertTrue(Files.readString(in("h.html")).contains("class seed 9"));
    }

    @Test
    void aHandoutOfEachLessonGoesIntoAFolderAndSaysHowFarItIs() throws IOException {
        Path folder = in("class");
        assertEquals(
                0,
                runWithTryCourse("handout", "all", "--key", "--progress", "--to", folder.toString()),
                err.toString());

        for (String name : List.of("01-try-key.pdf", "02-more-key.pdf")) {
            assertEquals(
                    "%PDF",
                    Files.readString(folder.resolve(name), StandardCharsets.ISO_8859_1)
                            .substring(0, 4));
        }
        assertTrue(err.toString().contains("Lesson 1 of 2: "), err.toString());
        assertTrue(err.toString().contains("Lesson 2 of 2: "), err.toString());
        assertTrue(out.toString().contains("2 lessons, class seed 1, are in " + folder), out.toString());
    }

    @Test
    void anUnknownLessonIsRefusedWithThoseThereAre() {
        assertRefused(
                runWithTryCourse("handout", "77", "--to", in("h.pdf").toString()), "no lesson '77'", "01-try, 02-more");
        assertRefused(
                runWithTryCourse("handout", "1", "--to", in("h.pdf").toString(), "--seed", "x"), "not a whole number");
    }

    @Test
    void exportWritesAFileForEachLesson() throws IOException {
        assertEquals(0, runWithTryCourse("export", "--to", in("new/shell").toString()), err.toString());
        String first = Files.readString(in("new/shell/01-try.jsh"));
        assertTrue(first.contains("plot(\"Flow against height\") .across("), first);
        assertTrue(first.contains("double tankBaseM = "), first);
        assertTrue(Files.exists(in("new/shell/02-more.jsh")));

        assertRefused(
                runWithTryCourse("export", "--to", design.resolve("below").toString()), "cannot be written", "allowed");
    }

    @Test
    void theShoppingListIsWrittenAndAddedUp() throws IOException {
        String list = in("list.csv").toString();

        assertEquals(0, run("shopping", design.toString(), "--to", list), err.toString());
        String filled = Files.readString(in("list.csv")).replaceFirst(",\r\n(?=\"Tube)", ",\"12,50\"\r\n");
        Files.writeString(in("list.csv"), filled);
        assertEquals(0, run("shopping", "--sum", list), err.toString());

        assertTrue(out.toString().contains("have no price yet"), out.toString());
        assertRefused(run("shopping", design.toString(), "--to", in("list.txt").toString()), "list.txt", ".csv");
        assertRefused(run("shopping", "--sum", in("missing.csv").toString()), "missing.csv");
        assertRefused(run("shopping", "--sum", design.toString()), "line 2", "comma-separated");
        assertRefused(run("shopping", design.toString()), "--to", "--sum");
    }

    /** Lesson after lesson on one line of the error stream, which is gone at the end; nothing of it where nobody sees that stream. */
    @Test
    void exportAndHandoutTellHowFarTheyAreWhereThatIsSeen() {
        assertEquals(0, runWithTryCourse("export", "--to", in("a").toString(), "--no-progress"), err.toString());
        assertEquals("", err.toString());

        assertEquals(0, runWithTryCourse("export", "--to", in("a").toString(), "--progress"), err.toString());
        assertTrue(err.toString().contains("\rWriting the Java of lesson 2 of 2"), err.toString());
        assertTrue(err.toString().endsWith(" \r") && !err.toString().contains("\n"), err.toString());
        assertFalse(out.toString().contains("\r"), out.toString());

        err.getBuffer().setLength(0);
        assertEquals(
                0, runWithTryCourse("handout", "1", "--to", in("h.html").toString(), "--no-progress"), err.toString());
        assertEquals("", err.toString());

        assertEquals(
                0, runWithTryCourse("handout", "1", "--to", in("h.html").toString(), "--progress"), err.toString());
        assertTrue(err.toString().contains("running its Java; Ctrl+C stops it"), err.toString());
        assertTrue(err.toString().contains("\rJava of the lesson that has run, 2 of 2"), err.toString());
        assertTrue(err.toString().endsWith(" \r") && !err.toString().contains("\n"), err.toString());
    }
}
