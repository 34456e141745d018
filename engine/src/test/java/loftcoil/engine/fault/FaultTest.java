package loftcoil.engine.fault;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A fault is one line with its path first, whatever stands in the names of a file. */
class FaultTest {

    @ParameterizedTest
    @ValueSource(strings = {"a\nb", "a\rb", "a\u0000b", "a\u001B[31mb", "a\u2028b", "a\u202Eb"})
    void namesInAPathAreCleaned(String name) {
        String line = new Fault("tank." + name, "\"" + name + "\"", "a name", "").line();
        assertEquals(1, line.lines().count(), line);
        assertTrue(line.startsWith("tank.a ") && PlainText.isLine(line), line);
    }

    @Test
    void anEmptyNameIsShownAsOne() {
        assertEquals("\"\": x; allowed: y", new Fault("", "x", "y", "").line());
        assertEquals("tank.\"\": x; allowed: y", new Fault("tank.", "x", "y", "").line());
    }

    @Test
    void aHugeNameOrValueStaysOnAShortLine() {
        String huge = "n".repeat(20_000);
        String line = new Fault("taps." + huge, huge, "a name", "").line();
        assertTrue(line.length() < 450, line);
        String known = new KnownNames("tap", List.of(huge, "a\nb"))
                .unknown("use[0].tap", "bath")
                .line();
        assertTrue(known.length() < 250, known);
        assertFalse(known.contains("\n"), known);
    }
}
