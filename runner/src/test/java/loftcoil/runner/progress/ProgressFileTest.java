package loftcoil.runner.progress;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import loftcoil.runner.progress.FolderException.Why;
import loftcoil.runner.progress.Progress.Given;
import loftcoil.runner.progress.Progress.LessonWork;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ProgressFileTest {

    @TempDir
    Path temp;

    private static final Progress SOME = Progress.start(42)
            .withLesson("01-warm")
            .withWork(
                    "01-warm",
                    LessonWork.NONE
                            .withStep("weigh")
                            .withSnippet("weigh", "int a = 1; // \"°C\" \\ \n")
                            .withRan("weigh")
                            .withAnswer("legs", new Given("9 Pa", AnswerState.WRONG, "no gravity"))
                            .withAnswer("legs", new Given("88.5 Pa", AnswerState.RIGHT, "")))
            .withWork("09-gone", LessonWork.NONE.withStep("a-step-no-lesson-has"));

    private Progress read() {
        try (ProgressFile file = ProgressFile.open(temp)) {
            return file.progress(1);
        }
    }

    @Test
    void whatIsKeptIsThereAgainUnknownStepsToo() {
        try (ProgressFile file = ProgressFile.open(temp.resolve("new/folder"))) {
            assertEquals(Progress.start(42), file.progress(42));
            file.keep(SOME);
            file.keepDesign("{\"any\": \"text\"}");
        }
        try (ProgressFile file = ProgressFile.open(temp.resolve("new/folder"))) {
            assertEquals(SOME, file.progress(1));
            assertEquals(Optional.of("{\"any\": \"text\"}"), file.design());
            assertEquals(List.of(), file.notices());
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "{",
                "null",
                "[]",
                "{\"version\": \"1\"}",
                "{\"version\": 0, \"seed\": 1, \"lesson\": \"\", \"lessons\": {}}",
                "{\"version\": 1, \"seed\": 1.7, \"lesson\": \"\", \"lessons\": {}}",
                "{\"version\": 1, \"lesson\": \"\", \"lessons\": {}}",
                "{\"version\": 1, \"seed\": 1, \"lesson\": null, \"lessons\": {}}",
                "{\"version\": 1, \"seed\": 1, \"lesson\": \"\", \"lessons\": {\"a\": null}}",
                "{\"version\": 1, \"seed\": 1, \"lesson\": \"\", \"lessons\": {}, \"more\": 1}",
                "{\"version\": 1, \"seed\": 1, \"lesson\": \"\", \"lessons\": {}} trailing",
                "{\"version\": 1, \"seed\": 1, \"lesson\": \"\", \"lessons\": {\"a\": {\"step\": \"\", \"snippets\": {\"b\": null},"
                        + " \"ran\": [], \"answers\": {}}}}",
            })
    void aDamagedFileIsSetAsideUnchangedAndTold(String damaged) throws IOException {
        Files.writeString(temp.resolve("progress.json"), damaged);
        try (ProgressFile file = ProgressFile.open(temp)) {
            assertEquals(Progress.start(7), file.progress(7));
            assertEquals(damaged, Files.readString(temp.resolve("progress.damaged-1.json")));
            assertEquals(1, file.notices().size());
            assertTrue(file.notices().get(0).contains("progress.damaged-1.json"), file.notices()::toString);
            assertFalse(Files.exists(temp.resolve("progress.json")));
        }
    }

    @Test
    void aFileSetAsideIsNeverWrittenOver() throws IOException {
        for (String damaged : List.of("first", "second", "third")) {
            Files.writeString(temp.resolve("progress.json"), damaged);
            read();
        }
        assertEquals("first", Files.readString(temp.resolve("progress.damaged-1.json")));
        assertEquals("second", Files.readString(temp.resolve("progress.damaged-2.json")));
        assertEquals("third", Files.readString(temp.resolve("progress.damaged-3.json")));
    }

    @Test
    void aFileOfTheEditionBeforeTheRefresherStillReads() throws IOException {
        Files.writeString(
                temp.resolve("progress.json"),
                "{\"version\": 1, \"seed\": 5, \"lesson\": \"01-warm\", \"lessons\": {\"01-warm\": {\"step\": \"a\","
                        + " \"snippets\": {}, \"ran\": [\"a\"], \"answers\": {}}}}");

        Progress read = read();

        assertEquals(Progress.VERSION, read.version());
        assertEquals(5, read.seed());
        assertEquals(List.of("a"), read.work("01-warm").ran());
        assertEquals(Map.of(), read.refresher());
        try (ProgressFile file = ProgressFile.open(temp)) {
            file.keep(read.withRefreshed("01-warm/legs", AnswerState.FORGOTTEN));
        }
        assertEquals(AnswerState.FORGOTTEN, read().refresher().get("01-warm/legs"));
        assertEquals(Map.of(), read().withoutRefresher().refresher());
    }

    @Test
    void workInALessonThatWasCutInTwoIsFoundInBoth() throws IOException {
        String given = "[{\"text\": \"1\", \"state\": \"right\", \"mistake\": \"\"}]";
        Files.writeString(
                temp.resolve("progress.json"),
                "{\"version\": 2, \"seed\": 5, \"lesson\": \"14-what-can-hurt\", \"refresher\": {}, \"lessons\": {"
                        + "\"14-what-can-hurt\": {\"step\": \"vent-height\", \"snippets\": {\"top-and-bottom\": \"1\"},"
                        + " \"ran\": [\"a-closed-tank\", \"top-and-bottom\"], \"answers\": {\"vent-height\": " + given
                        + ", \"alarm-sounds\": " + given + "}},"
                        + "\"06-slope-air-and-filling\": {\"step\": \"a-drip\", \"snippets\": {}, \"ran\": [],"
                        + " \"answers\": {\"a-drip\": " + given + "}}}}");

        Progress read = read();

        assertEquals("05-steam-and-the-vent", read.lesson());
        Progress.LessonWork steam = read.work("05-steam-and-the-vent");
        Progress.LessonWork hurt = read.work("15-what-can-hurt");
        assertEquals("vent-height", steam.step());
        assertEquals(List.of("a-closed-tank"), steam.ran());
        assertEquals(1, steam.answersTo("vent-height").size());
        assertEquals(List.of("top-and-bottom"), hurt.ran());
        assertEquals("1", hurt.snippets().get("top-and-bottom"));
        assertEquals(1, hurt.answersTo("alarm-sounds").size());
        assertEquals(0, hurt.answersTo("vent-height").size());
        assertEquals(
                1, read.work("07-slope-air-and-filling").answersTo("a-drip").size());
        try (ProgressFile file = ProgressFile.open(temp)) {
            file.keep(read);
        }
        assertEquals(read, read());
    }

    @Test
    void anAnswerOfTheEditionBeforeItsWordsWereKeptStillReads() throws IOException {
        Files.writeString(
                temp.resolve("progress.json"),
                "{\"version\": 2, \"seed\": 5, \"lesson\": \"01-warm\", \"refresher\": {}, \"lessons\": {\"01-warm\": {\"step\":"
                        + " \"a\", \"snippets\": {}, \"ran\": [], \"answers\": {\"legs\": [{\"text\": \"9\", \"state\":"
                        + " \"wrong\", \"mistake\": \"no gravity\"}]}}}}");
        assertEquals(
                List.of(new Given("9", AnswerState.WRONG, "no gravity")),
                read().work("01-warm").answersTo("legs"));
    }

    @Test
    void onlyTheLastAnswerKeepsWhatWasSaid() {
        Progress.LessonWork work = Progress.LessonWork.NONE
                .withAnswer("legs", new Given("9", AnswerState.WRONG, "", "Not yet.", "Look."))
                .withAnswer("legs", new Given("88", AnswerState.RIGHT, "", "Right.", ""));
        assertEquals(
                List.of("", "Right."),
                work.answersTo("legs").stream().map(Given::words).toList());
    }

    @Test
    void aFileOfANewerEditionIsSetAsideAsSuch() throws IOException {
        Files.writeString(
                temp.resolve("progress.json"),
                "{\"version\": " + (Progress.VERSION + 1) + ", \"everything\": \"else\"}");
        read();
        assertTrue(Files.exists(temp.resolve("progress.newer-1.json")));
    }

    @Test
    void bytesThatAreNoTextAreSetAside() throws IOException {
        byte[] bytes = {(byte) 0xff, (byte) 0xfe, 0, 1};
        Files.write(temp.resolve("design.json"), bytes);
        try (ProgressFile file = ProgressFile.open(temp)) {
            assertEquals(Optional.empty(), file.design());
            assertArrayEquals(bytes, Files.readAllBytes(temp.resolve("design.damaged-1.json")));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"progress.json", "design.json"})
    void aFileOfFiftyMegabytesIsSetAsideWithWords(String name) throws IOException {
        try (RandomAccessFile large = new RandomAccessFile(temp.resolve(name).toFile(), "rw")) {
            large.setLength(50_000_000);
        }
        try (ProgressFile file = ProgressFile.open(temp)) {
            assertEquals(Progress.start(7), file.progress(7));
            assertEquals(Optional.empty(), file.design());
            assertTrue(file.notices().get(0).startsWith(name + " could not be used (50000000 bytes"));
            assertEquals(50_000_000, Files.size(temp.resolve(name.replace(".json", ".damaged-1.json"))));
        }
    }

    @Test
    void whatCouldNotBeReadAgainIsNotKeptAndTheOldFileStays() throws IOException {
        try (ProgressFile file = ProgressFile.open(temp)) {
            file.keepDesign("old");
            FolderException refused =
                    assertThrows(FolderException.class, () -> file.keepDesign("x".repeat(17_000_000)));
            assertEquals(Why.TOO_LARGE, refused.why());
            assertEquals(Optional.of("old"), file.design());
        }
    }

    @Test
    void aDesignCanBeSetAsideByThoseWhoKnowWhatItMeans() {
        try (ProgressFile file = ProgressFile.open(temp)) {
            file.keepDesign("{}");
            file.setDesignAside("it has no tank");
            assertEquals(Optional.empty(), file.design());
            assertTrue(file.notices().get(0).contains("it has no tank"));
            assertTrue(Files.exists(temp.resolve("design.damaged-1.json")));
        }
    }

    @Test
    void oneFolderOneWriter() {
        try (ProgressFile first = ProgressFile.open(temp)) {
            FolderException refused = assertThrows(FolderException.class, () -> ProgressFile.open(temp));
            assertEquals(Why.IN_USE, refused.why());
            assertEquals(temp, refused.path());
            assertTrue(refused.getMessage().contains(temp.toString()));
            first.keep(SOME);
        }
        assertEquals(SOME, read());
    }

    @Test
    void aFolderThatIsAFileIsRefused() throws IOException {
        Path file = Files.writeString(temp.resolve("file"), "mine");
        FolderException refused = assertThrows(FolderException.class, () -> ProgressFile.open(file));
        assertEquals(Why.NO_FOLDER, refused.why());
        FolderException below = assertThrows(FolderException.class, () -> ProgressFile.open(file.resolve("below")));
        assertEquals(Why.NO_ACCESS, below.why());
        assertEquals("mine", Files.readString(file));
    }

    @Test
    void whereTheFileCannotBeReplacedTheTroubleIsTyped() throws IOException {
        // A folder in the file's place: neither readable nor replaceable, whoever runs the test.
        Files.createDirectories(temp.resolve("progress.json/in the way"));
        try (ProgressFile file = ProgressFile.open(temp)) {
            assertEquals(
                    Why.NO_ACCESS,
                    assertThrows(FolderException.class, () -> file.progress(1)).why());
            assertEquals(
                    Why.NO_ACCESS,
                    assertThrows(FolderException.class, () -> file.keep(SOME)).why());
        }
    }

    @Test
    void aByteOrderMarkIsNoDamage() throws IOException {
        try (ProgressFile file = ProgressFile.open(temp)) {
            file.keep(SOME);
            file.keepDesign("{}");
        }
        for (String name : List.of("progress.json", "design.json")) {
            Path path = temp.resolve(name);
            Files.writeString(path, "\uFEFF" + Files.readString(path));
        }
        assertEquals(new ProgressCopy.Usable(SOME), ProgressCopy.read(temp.resolve("progress.json")));
        try (ProgressFile file = ProgressFile.open(temp)) {
            assertEquals(SOME, file.progress(1));
            assertEquals(Optional.of("{}"), file.design());
            assertEquals(List.of(), file.notices());
        }
    }

    @Test
    void aKeyNotKnownIsNamedAndItsFileIsSetAsideUnchanged() throws IOException {
        String odd = "{\"version\":2,\"seed\":1,\"lesson\":\"\",\"lessons\":{},\"refresher\":{},\"pumpW\":3}";
        Files.writeString(temp.resolve("progress.json"), odd);
        try (ProgressFile file = ProgressFile.open(temp)) {
            file.progress(1);
            assertTrue(
                    file.notices().get(0).contains("it holds \"pumpW\""),
                    file.notices().get(0));
            assertFalse(file.notices().get(0).contains("-1,"), file.notices().get(0));
        }
        assertEquals(odd, Files.readString(temp.resolve("progress.damaged-1.json")));
    }

    @Test
    void aLinkStaysALinkAndItsTargetIsWritten() throws IOException {
        Path target = Files.createDirectories(temp.resolve("other disk")).resolve("mine.json");
        Path link = Files.createDirectories(temp.resolve("work")).resolve("progress.json");
        Files.createSymbolicLink(link, Path.of("../other disk/mine.json"));
        try (ProgressFile file = ProgressFile.open(link.getParent())) {
            file.keep(SOME);
            assertEquals(SOME, file.progress(1));
        }
        assertTrue(Files.isSymbolicLink(link));
        assertEquals(new ProgressCopy.Usable(SOME), ProgressCopy.read(target));
    }

    @Test
    void aFullDiskIsToldWithItsFolderAndTheOldFileStays() throws IOException {
        // Linux's own device that is always full stands where the new file would be written.
        assumeTrue(Files.exists(Path.of("/dev/full")));
        try (ProgressFile file = ProgressFile.open(temp)) {
            file.keep(SOME);
            Files.createSymbolicLink(temp.resolve("progress.json.new"), Path.of("/dev/full"));
            FolderException full = assertThrows(FolderException.class, () -> file.keep(Progress.start(1)));
            assertEquals(Why.FULL, full.why());
            assertEquals(temp, full.path());
            assertTrue(String.valueOf(full.getMessage()).contains("its disk is full"), full.getMessage());
            assertEquals(SOME, file.progress(1));
        }
    }

    @Test
    void aFileWithoutEndIsPassedOver() {
        assumeTrue(Files.exists(Path.of("/dev/zero")));
        ProgressCopy copy = ProgressCopy.read(Path.of("/dev/zero"));
        assertEquals(
                new ProgressCopy.Unusable("a file without a known end is more than the 16000000 that are read"), copy);
    }

    @Test
    void triesAreCounted() {
        Given wrong = new Given("1", AnswerState.WRONG, "");
        Given unread = new Given("?", AnswerState.UNREAD, "");
        assertEquals(new Tries(2, false), Tries.of(List.of(wrong, unread, wrong)));
        assertFalse(Tries.of(List.of(wrong, unread, wrong)).solutionDue());
        assertTrue(Tries.of(List.of(wrong, wrong, wrong)).solutionDue());
        assertTrue(Tries.of(List.of(new Given("2", AnswerState.RIGHT, ""))).solutionDue());
        assertFalse(Tries.of(List.of()).solutionDue());
    }

    @Test
    void changesLeaveTheRestAsItWas() {
        LessonWork work = SOME.work("01-warm");
        assertEquals(LessonWork.NONE, SOME.work("02-other"));
        assertEquals(Map.of(), work.withoutSnippet("weigh").snippets());
        assertEquals(work.answers(), work.withoutSnippet("weigh").answers());
        assertEquals(work, work.withRan("weigh"));
        assertEquals(42, SOME.seed());
    }

    @Test
    void progressChangedByOtherMeansMeanwhileIsKeptUnderANameThatSaysSo() throws IOException {
        Path own = temp.resolve("progress.json");
        try (ProgressFile file = ProgressFile.open(temp)) {
            file.keep(SOME);
            file.keep(SOME.withLesson("02-tank"));
            assertEquals(List.of(), file.notices());
            Files.writeString(own, "theirs");
            file.keep(SOME.withLesson("03-pipe"));

            assertEquals("theirs", Files.readString(temp.resolve("progress.changed-elsewhere-1.json")));
            assertTrue(file.notices().get(0).contains("progress.changed-elsewhere-1.json"), file.notices()::toString);
            Files.delete(own);
            file.keep(SOME);
            assertEquals(1, file.notices().size());
        }
        assertEquals(SOME, read());
    }
}
