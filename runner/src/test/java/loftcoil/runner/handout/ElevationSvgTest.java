package loftcoil.runner.handout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.regex.Pattern;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.Example;
import loftcoil.engine.sheet.Drawing;
import org.junit.jupiter.api.Test;

class ElevationSvgTest {

    private static final Design BOTHY = Example.orchardBothy();
    private static final String ALONG = "transform=\"rotate(";

    private static String drawn(double roomMm) {
        Drawing drawing = Drawing.of(BOTHY);
        DrawingScale scale =
                DrawingScale.fitting(drawing.bounds(), new DrawingScale.Room(roomMm, roomMm), Units.METRIC);
        // A number and its unit are held together by a space that does not break.
        return ElevationSvg.of(drawing, ElevationPart.marks(BOTHY), new MeasureText(Units.METRIC), scale)
                .replace('\u00a0', ' ')
                .replace('\u202f', ' ');
    }

    private static int count(String text, String part) {
        return text.split(Pattern.quote(part), -1).length - 1;
    }

    @Test
    void slopesAreWrittenAlongTheirPipesWhereThereIsRoom() {
        String large = drawn(200);

        assertEquals(2, count(large, ALONG));
        assertTrue(large.contains(">rises 258 mm/m</text>"), large);
        assertTrue(large.contains(">falls 169 mm/m</text>"), large);
    }

    @Test
    void inASmallDrawingTheyAreListedBelowWithTheMarkOfThePipe() {
        String small = drawn(60);

        assertFalse(small.contains(ALONG), small);
        assertTrue(small.contains(">C2 falls 169 mm/m</text>"), small);
        assertTrue(small.contains(">H2 rises 258 mm/m</text>"), small);
    }
}
