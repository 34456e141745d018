package loftcoil.runner.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import loftcoil.engine.design.Example;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What only a process of its own can show: where its output goes, the letters of its terminal, and a small Java. */
@Timeout(300)
class StartedAsProgramTest {

    private static final Path FULL = Path.of("/dev/full");

    @TempDir
    private Path folder;

    private Path design;
    private Path told;

    @BeforeEach
    void writeDesign() throws IOException {
        // Without heat of a fire and without sun it has no starts and no year, which take a program that has just begun
        // several seconds.
        ObjectNode still = (ObjectNode) new ObjectMapper().readTree(Example.orchardBothyJson());
        still.remove(List.of("fire", "window"));
        ((ObjectNode) still.get("coil")).put("heatKW", 0);
        design = Files.writeString(folder.resolve("design.json"), still.toString());
        told = folder.resolve("told.txt");
    }

    private ProcessBuilder program(List<String> options, String... args) {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC"));
        command.addAll(options);
        command.addAll(List.of("-cp", System.getProperty("java.class.path"), Loftcoil.class.getName()));
        command.addAll(List.of(args));
        return new ProcessBuilder(command)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .redirectError(told.toFile());
    }

    private String told() throws IOException {
        return Files.readString(told);
    }

    private void assertToldInOneLine(String... words) throws IOException {
        assertEquals(1, told().lines().count(), told());
        assertTrue(Stream.of(words).allMatch(told()::contains), told());
        assertTrue(told().contains("; allowed: "), told());
    }

    @ParameterizedTest
    @ValueSource(strings = {"sheet", "--help"})
    void aFullDiskUnderStandardOutputIsToldInOneLine(String command) throws Exception {
        assumeTrue(Files.exists(FULL));
        int status = program(List.of(), command, design.toString())
                .redirectOutput(FULL.toFile())
                .start()
                .waitFor();

        assertEquals(2, status, told());
        assertToldInOneLine("standard output: cannot be written");
    }

    @Test
    void standardOutputThatIsClosedIsToldInOneLine() throws Exception {
        assumeTrue(Files.exists(FULL));
        ProcessBuilder closing = program(List.of(), "sheet", design.toString());
        closing.command().addAll(0, List.of("/bin/sh", "-c", "exec \"$@\" >&-", "sh"));

        assertEquals(2, closing.start().waitFor(), told());
        assertToldInOneLine("standard output: cannot be written");
    }

    @Test
    void whoReadsNoMoreIsLeftInPeace() throws Exception {
        Process sheet = program(List.of(), "sheet", design.toString())
                .redirectOutput(ProcessBuilder.Redirect.PIPE)
                .start();
        sheet.getInputStream().close();

        assertEquals(0, sheet.waitFor(), told());
        assertEquals("", told());
    }

    @Test
    void lettersThatTheLanguageSettingLosesAreToldAndNothingIsMade() throws Exception {
        assumeTrue(Files.exists(FULL));
        // The letters are written in octal, so that this holds whatever setting the test itself runs under.
        String inFolder = "mkdir \"$(printf 'p\\303\\244th')\" && cd p*th && \"$@\"";
        ProcessBuilder inside = program(List.of(), "sheet", "x.json").directory(folder.toFile());
        inside.command().addAll(0, List.of("/bin/sh", "-c", inFolder, "sh"));
        inside.environment().putAll(Map.of("LC_ALL", "C"));
        assertEquals(2, inside.start().waitFor(), told());
        assertToldInOneLine("th: letters were lost", "LC_ALL=C.UTF-8");

        String asArgument = "\"$@\" \"$(printf 'w\\303\\266rk')\"";
        ProcessBuilder named = program(List.of(), "--no-browser", "--folder").directory(folder.toFile());
        named.command().addAll(0, List.of("/bin/sh", "-c", asArgument, "sh"));
        named.environment().put("LC_ALL", "C");
        assertEquals(2, named.start().waitFor(), told());
        assertToldInOneLine("rk: letters were lost");
        File[] made = folder.toFile().listFiles(File::isDirectory);
        assertEquals(1, Optional.ofNullable(made).orElseThrow().length, "the folder of this test alone");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "java.se,jdk.compiler,jdk.httpserver,jdk.zipfs | prove | jdk.jshell",
                "java.se,jdk.httpserver,jdk.zipfs | prove | compiler",
                "java.se,jdk.compiler,jdk.jshell,jdk.httpserver | prove | jdk.zipfs",
                "java.se,jdk.compiler,jdk.jshell,jdk.zipfs | page | com.sun.net.httpserver",
            })
    void aSmallJavaIsToldInOneLine(String modules, String command, String lacking) throws Exception {
        List<String> small = List.of("--limit-modules", modules);
        ProcessBuilder started = command.equals("page")
                ? program(
                        small,
                        "page",
                        "--no-browser",
                        "--folder",
                        folder.resolve("work").toString())
                : program(small, command);

        assertEquals(2, started.start().waitFor(), told());
        assertEquals(1, told().lines().count(), told());
        assertTrue(told().contains(lacking) && told().contains("a whole JDK, 17 or newer"), told());
        assertFalse(told().contains("Exception"), told());
    }

    @Test
    void theWholeOfASheetIsWrittenInUtf8WhereThatIsTheSetting() throws Exception {
        Path sheet = folder.resolve("sheet.txt");
        int status = program(List.of("-Dfile.encoding=UTF-8", "-Dstdout.encoding=UTF-8"), "sheet", design.toString())
                .redirectOutput(sheet.toFile())
                .start()
                .waitFor();

        assertEquals(0, status, told());
        assertTrue(Files.readString(sheet, StandardCharsets.UTF_8).contains("40 °C"), Files.readString(sheet));
    }
}
