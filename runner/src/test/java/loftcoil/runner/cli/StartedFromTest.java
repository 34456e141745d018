package loftcoil.runner.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** Names of files under a starter that went into another folder. */
class StartedFromTest {

    @AfterEach
    void forget() {
        System.clearProperty(StartedFrom.PROPERTY);
    }

    @Test
    void withoutTheStarterANameStaysAsItIs() {
        assertEquals(Path.of("sheet.pdf"), StartedFrom.file("sheet.pdf"));
    }

    @Test
    void aNameIsSeenFromWhereThePersonStood() {
        System.setProperty(StartedFrom.PROPERTY, "/home/ö");

        assertEquals(Path.of("/home/ö/sheet.pdf"), StartedFrom.file("sheet.pdf"));
        assertEquals(Path.of("/media/sheet.pdf"), StartedFrom.file("/media/sheet.pdf"));
    }

    @Test
    void withoutThePropertyTheEnvironmentSaysWhereThePersonStood() throws Exception {
        assertEquals(Path.of("/home/ö/sheet.pdf"), StartedFrom.file("sheet.pdf", "/home/ö"));
        assertEquals(Path.of("sheet.pdf"), StartedFrom.file("sheet.pdf", ""));
        assertTrue(starter("Loftcoil.cmd").contains("set \"" + StartedFrom.ENVIRONMENT + "=%CD%\""));
    }

    /** One system's starter is not forgotten where the other's is tuned. */
    @Test
    void everyStarterGivesJavaTheSameSettings() throws Exception {
        List<String> settings = settings("loftcoil.sh");
        assertTrue(settings.size() > 10, settings.toString());
        assertEquals(settings, settings("Loftcoil.cmd"));
    }

    private static List<String> settings(String starter) throws IOException {
        return Pattern.compile("-(X|Dloftcoil\\.shared)\\S+")
                .matcher(starter(starter))
                .results()
                .map(MatchResult::group)
                .toList();
    }

    private static String starter(String name) throws IOException {
        return Files.readString(Path.of("src/carry", name), StandardCharsets.UTF_8);
    }
}
