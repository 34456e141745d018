package loftcoil.runner.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class PlainTextTest {

    @Test
    void wordsAreKeptAndLinesAreShort() {
        assertEquals(List.of("one two", "three"), Wrap.lines("one two three", 8));
    }

    @Test
    void listItemsHangUnderTheirText() {
        assertEquals(List.of("- one", "  two"), Wrap.lines("- one two", 6));
        assertEquals(List.of("12. one", "    two"), Wrap.lines("12. one two", 8));
    }

    @Test
    void linesOfTwoColumnsHangUnderTheSecond() {
        assertEquals(List.of("q  leave", "   now"), Wrap.hanging("q  leave now", 3, 9));
    }

    @Property(tries = 300)
    void noWordIsLostAtAnyWidth(@ForAll String text, @ForAll @IntRange(min = 1, max = 90) int width) {
        String joined = String.join(" ", Wrap.lines(text, width)).strip().replaceAll("\\s+", " ");

        assertEquals(text.strip().replaceAll("\\s+", " "), joined);
    }

    @Test
    void codeIsIndentedAndNotWrapped() {
        String text = PlainText.of("Look:\n\n```text\na  b   c   d   e\n```\n", 8);

        assertTrue(text.contains("    a  b   c   d   e"), text);
    }

    @Test
    void aLineEndWithinAParagraphIsASpace() {
        assertEquals("one two three\n\n- four five", PlainText.of("one\ntwo\nthree\n\n- four\n  five\n", 60));
    }

    @Test
    void headingsAreUnderlinedAndTablesKeepTheirRows() {
        String text = PlainText.of("## Bores\n\n| tube | bore |\n|---|---|\n| 22 | 20.2 |\n", 60);

        assertTrue(text.startsWith("Bores\n-----"), text);
        assertTrue(text.lines().anyMatch(line -> line.contains("22") && line.contains("20.2")), text);
    }
}
