package loftcoil.runner.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
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
}
