package loftcoil.runner.handout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.regex.Pattern;
import loftcoil.engine.design.Changes;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.Example;
import loftcoil.engine.sheet.Drawing;
import loftcoil.engine.words.Units;
import org.junit.jupiter.api.Test;

class ElevationSvgTest {

    private static final Design BOTHY = Example.orchardBothy();
    private static final String ALONG = "transform=\"rotate(";

    private static String drawn(double roomMm) {
        return drawn(BOTHY, roomMm);
    }

    private static String drawn(Design design, double roomMm) {
        Drawing drawing = Drawing.of(design);
        DrawingScale scale =
                DrawingScale.fitting(drawing.bounds(), new DrawingScale.Room(roomMm, roomMm), Units.METRIC);
        // A number and its unit are held together by a space that does not break.
        return ElevationSvg.of(drawing, ElevationPart.marks(design), new MeasureText(Units.METRIC), scale)
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

    @Test
    void aRunThatIsDrawnShortKeepsTheSlopeOfThePipe() {
        Design far = Changes.apply(BOTHY, "hotLegs.runM", "12");
        Drawing.Line back = Drawing.of(far).pipes().get(4);
        double drawnM =
                Math.abs(back.points().get(1).xM() - back.points().get(0).xM());
        long slope = Math.round(back.run().slopeMmPerM().orElseThrow());

        assertTrue(drawnM < back.run().levelRunM() - 0.5, "drawn " + drawnM + " m");
        assertTrue(drawn(far, 400).contains("rises " + slope + " mm/m</text>"), drawn(far, 400));
    }
}
