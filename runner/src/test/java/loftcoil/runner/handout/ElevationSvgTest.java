package loftcoil.runner.handout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import loftcoil.engine.build.CutList;
import loftcoil.engine.design.Changes;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.Example;
import loftcoil.engine.sheet.Currents;
import loftcoil.engine.sheet.Drawing;
import loftcoil.engine.words.Units;
import loftcoil.runner.show.HousePen;
import loftcoil.runner.show.HouseSvg;
import loftcoil.runner.show.RandomHouses;
import org.junit.jupiter.api.Test;

/** The house on paper: every cut of the list, every port and slope is on it, at both units, and no words on words. */
class ElevationSvgTest {

    private static final Design BOTHY = Example.orchardBothy();

    private static String drawn(Design design, double roomMm, Map<String, List<String>> pieces) {
        Drawing drawing = Drawing.of(design);
        DrawingScale scale =
                DrawingScale.fitting(drawing.bounds(), new DrawingScale.Room(roomMm, roomMm), Units.METRIC);
        Currents currents = Currents.of(design, 40);
        // A number and its unit are held together by a space that does not break.
        return ElevationSvg.of(drawing, Optional.of(currents), pieces, new MeasureText(Units.METRIC), scale)
                .replace('\u00a0', ' ')
                .replace('\u202f', ' ');
    }

    @Test
    void slopesOfLyingPipesAreWritten() {
        for (double room : new double[] {60, 120, 200}) {
            String svg = drawn(BOTHY, room, Map.of());
            assertTrue(svg.contains(">C2 falls 169 mm/m</text>"), svg);
            assertTrue(svg.contains(">H2 rises 258 mm/m</text>"), svg);
        }
    }

    @Test
    void aRunThatIsDrawnShortKeepsTheSlopeOfThePipeAndSaysSo() {
        Design far = Changes.apply(BOTHY, "hotLegs.runM", "12");
        Drawing.Line back = Drawing.of(far).pipes().get(4);
        long slope = Math.round(back.run().slopeMmPerM().orElseThrow());
        String svg = drawn(far, 400, Map.of());
        assertTrue(back.drawnShort());
        assertTrue(svg.contains("H2 rises " + slope + " mm/m</text>"), svg);
        assertTrue(svg.contains("drawn short, towards you: H1, H2"), svg);
    }

    @Test
    void everyCutIsOnTheDrawing() {
        for (Design design : RandomHouses.withDwellings(8, 9)) {
            CutList cuts = CutList.of(design);
            Map<String, List<String>> pieces = ElevationPart.pieces(cuts);
            String svg = drawn(design, 150, pieces);
            for (CutList.Piece piece : cuts.pieces()) {
                assertTrue(
                        svg.matches("(?s).*[> ]" + java.util.regex.Pattern.quote(piece.mark()) + "[<, ].*"),
                        piece.mark() + " " + svg);
            }
        }
    }

    @Test
    void noWordsStandOnWordsInBothUnits() {
        for (Design design : RandomHouses.withDwellings(20, 21)) {
            for (Units units : Units.values()) {
                Drawing drawing = Drawing.of(design);
                DrawingScale scale = DrawingScale.fitting(drawing.bounds(), new DrawingScale.Room(120, 180), units);
                HousePen pen = ElevationSvg.pen(
                        drawing, ElevationPart.pieces(CutList.of(design)), new MeasureText(units), scale);
                HouseSvg.Drawn svg =
                        HouseSvg.draw(drawing, Optional.of(Currents.of(design, 40)), Optional.empty(), pen);
                for (int i = 0; i < svg.words().size(); i++) {
                    for (int j = 0; j < i; j++) {
                        List<Double> one = svg.words().get(i);
                        List<Double> other = svg.words().get(j);
                        boolean touch = one.get(0) < other.get(2)
                                && other.get(0) < one.get(2)
                                && one.get(1) < other.get(3)
                                && other.get(1) < one.get(3);
                        assertEquals(false, touch, design.name() + one + other);
                    }
                }
            }
        }
    }
}
