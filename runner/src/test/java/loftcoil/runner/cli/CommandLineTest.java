package loftcoil.runner.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.RandomAccessFile;
import java.io.StringWriter;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import loftcoil.engine.design.DesignJson;
import loftcoil.engine.design.Example;
import loftcoil.runner.show.TryCourse;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;

class CommandLineTest {

    private static final ObjectMapper JSON = new ObjectMapper();

    @TempDir
    private Path folder;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();
    private Path design;

    @BeforeEach
    void writeDesign() throws IOException {
        design = folder.resolve("design.json");
        Files.writeString(design, DesignJson.write(Example.orchardBothy()));
    }

    private int run(String... args) {
        CommandLine commandLine = Loftcoil.commandLine();
        commandLine.setOut(new PrintWriter(out, true));
        commandLine.setErr(new PrintWriter(err, true));
        return commandLine.execute(args);
    }

    private void edit(String pointerToObject, String field, JsonNode value) throws IOException {
        JsonNode root = JSON.readTree(design.toFile());
        ((ObjectNode) root.at(pointerToObject)).set(field, value);
        Files.writeString(design, JSON.writeValueAsString(root));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "page",
                "terminal",
                "refresh",
                "sheet",
                "build",
                "compare",
                "handout",
                "class",
                "export",
                "self-check",
                "licences",
                "prove"
            })
    void everyCommandHasHelp(String command) {
        int status = command.isEmpty() ? run("--help") : run(command, "--help");

        assertEquals(0, status);
        assertTrue(out.toString().startsWith("Usage: loftcoil"), out.toString());
        assertEquals("", err.toString());
    }

    @Test
    void aPortThatIsTakenIsRefusedOnOneLine() throws IOException {
        try (ServerSocket taken = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            String port = Integer.toString(taken.getLocalPort());

            assertEquals(
                    2, run("--no-browser", "--folder", folder.resolve("work").toString(), "--port", port));
            assertEquals(1, err.toString().lines().count(), err.toString());
            assertTrue(err.toString().startsWith("--port: " + port + " is taken"), err.toString());
        }
    }

    @Test
    void anOptionThatIsNoNumberIsToldSoWithoutJavasWords() {
        assertEquals(2, run("sheet", design.toString(), "--tank-c", "abc"));
        assertTrue(err.toString().contains("'abc' is not a number"), err.toString());
    }

    @Test
    void aSheetAsTextSaysThatTheLoopCirculates() {
        assertEquals(0, run("sheet", design.toString()), err.toString());
        assertTrue(out.toString().contains("The loop circulates"), out.toString());
    }

    @Test
    void aSheetAsJsonHasTheKeysOthersRelyOn() throws IOException {
        calm();
        assertEquals(0, run("sheet", design.toString(), "--json"), err.toString());

        JsonNode sheet = JSON.readTree(out.toString());
        assertTrue(sheet.at("/loop/circulates").asBoolean());
        for (String key : new String[] {
            "flowKgPerS",
            "drivePa",
            "reynolds",
            "coilInC",
            "coilOutC",
            "returnC",
            "boilMarginK",
            "coldFire/flowKgPerS",
            "coldFire/lossW"
        }) {
            assertTrue(sheet.at("/loop/" + key).isNumber(), key);
        }
        assertTrue(sheet.at("/tank/fullMassKg").isNumber());
        assertTrue(sheet.at("/tank/expansionL").isNumber());
        assertTrue(sheet.at("/cautions").isArray());
        assertTrue(sheet.at("/verdict/borrowed").isInt());
        for (JsonNode caution : sheet.at("/cautions")) {
            assertTrue(caution.path("clears").isArray(), caution.toString());
        }
        JsonNode joint = caution(sheet, "LC-COIL-JOINT").at("/clears/0");
        assertEquals("coil.turns", joint.path("change").asText());
        assertEquals("bent from one length", joint.path("to").asText());
        assertTrue(joint.path("words").asText().startsWith("a coil bent"), joint.toString());
    }

    /** A bothy whose tank does not boil, so that the search has little to do. */
    private void calm() throws IOException {
        Files.writeString(design, DesignJson.write(Example.orchardBothy().withCoilHeatKW(0.5)));
    }

    private static JsonNode caution(JsonNode sheet, String code) {
        for (JsonNode caution : sheet.at("/cautions")) {
            if (caution.path("code").asText().equals(code)) {
                return caution;
            }
        }
        throw new AssertionError("no " + code + " in " + sheet.at("/cautions"));
    }

    @Test
    void theSearchCanBeLeftOut() throws IOException {
        assertEquals(0, run("sheet", design.toString(), "--json", "--no-clears"), err.toString());
        JsonNode joint = caution(JSON.readTree(out.toString()), "LC-COIL-JOINT");
        assertTrue(joint.path("clears").isMissingNode(), joint.toString());
        assertEquals("danger", joint.path("severity").asText());
    }

    @Test
    void aSheetAsTextTellsWhatClearsWhereItIsAskedTo() throws IOException {
        calm();
        assertEquals(0, run("sheet", design.toString(), "--clears"), err.toString());
        assertTrue(out.toString().contains("· a coil bent from one length"), out.toString());
    }

    @Test
    void theTankTemperatureCanBeChosen() throws IOException {
        assertEquals(0, run("sheet", design.toString(), "--json", "--no-clears", "--tank-c", "60"), err.toString());

        assertEquals(60, JSON.readTree(out.toString()).at("/loop/coilInC").asDouble(), 1.0);
    }

    @Test
    void aTankBelowTheCoilDoesNotCirculate() throws IOException {
        Files.writeString(design, DesignJson.write(Example.orchardBothy().withTankBaseM(-1)));

        assertEquals(0, run("sheet", design.toString(), "--json", "--no-clears"), err.toString());
        JsonNode sheet = JSON.readTree(out.toString());
        assertFalse(sheet.at("/loop/circulates").asBoolean());
        assertEquals(0, sheet.at("/loop/flowKgPerS").asDouble());
        assertTrue(
                sheet.at("/loop/words").asText().contains("does not circulate"),
                sheet.at("/loop").toString());
    }

    @Test
    void everyFaultOfADesignIsOneLineFieldPathFirst() throws IOException {
        edit("/coldLegs/0", "tube", JSON.getNodeFactory().textNode("EN1057 23x0.9"));
        edit("/tank", "volumeL", JSON.getNodeFactory().textNode("a lot"));

        assertEquals(2, run("sheet", design.toString()));
        assertEquals("", out.toString());
        assertTrue(err.toString().lines().anyMatch(line -> line.startsWith("coldLegs[0].tube: ")), err.toString());
        assertTrue(err.toString().lines().anyMatch(line -> line.startsWith("tank.volumeL: ")), err.toString());
        assertTrue(err.toString().lines().allMatch(line -> line.contains("allowed") && line.contains("design.json")));
    }

    @Test
    void risesThatDoNotCloseAreRefusedWithTheSums() throws IOException {
        edit("/hotLegs/0", "riseM", JSON.getNodeFactory().numberNode(1.2));

        assertEquals(2, run("sheet", design.toString()));
        assertEquals(1, err.toString().lines().count(), err.toString());
        assertTrue(err.toString().contains("1.55"), err.toString());
    }

    @Test
    void aWaterlineBelowTheReturnPortIsRefused() throws IOException {
        edit("/tank", "waterlineM", JSON.getNodeFactory().numberNode(0.3));

        assertEquals(2, run("sheet", design.toString()));
        assertTrue(err.toString().lines().anyMatch(line -> line.startsWith("tank.waterlineM: ")), err.toString());
    }

    @Test
    void aByteOrderMarkBeforeADesignIsSkipped() throws IOException {
        Files.writeString(design, "\uFEFF" + Files.readString(design));

        assertEquals(0, run("sheet", design.toString()), err.toString());
    }

    @Test
    void anEmptyFileIsRefused() throws IOException {
        Files.writeString(design, "");

        assertEquals(2, run("sheet", design.toString()));
        assertEquals(1, err.toString().lines().count(), err.toString());
    }

    @Test
    void aFileOfFiftyMegabytesIsRefusedWithoutReadingIt() throws IOException {
        try (RandomAccessFile large = new RandomAccessFile(design.toFile(), "rw")) {
            large.setLength(50_000_000);
        }

        assertEquals(2, run("sheet", design.toString()));
        assertTrue(err.toString().contains("50000000 bytes; allowed: a design file of at most"), err.toString());
    }

    @Test
    void aMissingFileAFolderAndBytesThatAreNoTextAreRefused() throws IOException {
        assertEquals(2, run("sheet", folder.resolve("none.json").toString()));
        assertEquals(2, run("sheet", folder.toString()));
        Files.write(design, new byte[] {(byte) 0xff, (byte) 0xfe, 0});
        assertEquals(2, run("sheet", design.toString()));

        assertEquals(3, err.toString().lines().count(), err.toString());
        assertTrue(err.toString().lines().allMatch(line -> line.contains("; allowed: ")), err.toString());
    }

    @Test
    void anImpossibleTankTemperatureIsRefused() {
        assertEquals(2, run("sheet", design.toString(), "--tank-c", "140"));
        assertEquals(2, run("sheet", design.toString(), "--tank-c", "NaN"));
        assertEquals(2, run("sheet", design.toString(), "--tank-c", "warm"));
        assertTrue(err.toString().contains("allowed"), err.toString());
    }

    @Test
    void aBadPortAndAnUnknownOptionAreRefused() {
        assertEquals(
                2,
                run(
                        "page",
                        "--port",
                        "99999",
                        "--folder",
                        folder.resolve("work").toString()));
        assertEquals(2, run("sheet", "--jason", design.toString()));
        assertTrue(err.toString().contains("--port: 99999; allowed: 1024 to 65535"), err.toString());
        assertTrue(err.toString().contains("--jason"), err.toString());
        assertTrue(err.toString().contains("loftcoil sheet --help"), err.toString());
    }

    @Test
    void aCourseWithFaultsIsRefusedWithFileAndLine() throws IOException {
        Path lessons = Files.createDirectories(folder.resolve("lessons"));
        Path exercises = Files.createDirectories(folder.resolve("exercises"));
        Files.writeString(
                lessons.resolve("01-bad.md"),
                """
                ---
                title: Bad
                step: 1
                minutes: 5
                needs:
                ---
                # Bad

                [Question: none](../exercises/01-bad/none.json)

                ```java name=open
                1 + 1
                """);

        int status = run("prove", "--lessons", lessons.toString(), "--exercises", exercises.toString());

        assertEquals(2, status, err.toString());
        assertTrue(err.toString().contains("01-bad.md:9"), err.toString());
        assertTrue(err.toString().contains("01-bad.md:11"), err.toString());
        assertTrue(err.toString().lines().allMatch(line -> line.contains("allowed")), err.toString());
    }

    @Test
    void aCourseThatHoldsIsProved() {
        Path course = TryCourse.folder();
        int status = run(
                "prove",
                "--lessons",
                course.resolve("lessons").toString(),
                "--exercises",
                course.resolve("exercises").toString());

        assertEquals(0, status, out.toString() + err);
        assertEquals(2, out.toString().lines().count(), out.toString());
        assertTrue(out.toString().lines().allMatch(line -> line.contains("all hold")), out.toString());
    }

    @Test
    void oneLessonCanBeProvedAlone() {
        Path course = TryCourse.folder();
        int status = run(
                "prove",
                "02-more",
                "--lessons",
                course.resolve("lessons").toString(),
                "--exercises",
                course.resolve("exercises").toString());

        assertEquals(0, status, out.toString() + err);
        assertEquals(1, out.toString().lines().count(), out.toString());
    }

    @Test
    void aLessonThatIsNotThereIsRefusedWithTheLikelyName() {
        int status = run("prove", "01-warm-watr");

        assertEquals(2, status);
        assertTrue(err.toString().startsWith("LESSON: "), err.toString());
        assertTrue(err.toString().contains("01-warm-water"), err.toString());
    }

    @Test
    void theLicencesAreListed() {
        assertEquals(0, run("licences"));
        assertTrue(out.toString().lines().anyMatch(line -> line.matches("org\\.jline:jline:[0-9.]+ +BSD-3-Clause .*")));
    }
}
