package loftcoil.runner.show;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import loftcoil.engine.design.Changes;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.Example;
import loftcoil.engine.sheet.Currents;
import loftcoil.engine.sheet.Drawing;
import loftcoil.engine.words.Measure;
import loftcoil.engine.words.MeasureKind;
import loftcoil.engine.words.Units;
import org.junit.jupiter.api.Test;

/** The house on the page: all of it is there, no words stand on words, water runs the way it was computed. */
class LoopSvgTest {

    private static final Pattern TEXT = Pattern.compile(
            "<text x=\"([-\\d.]+)\" y=\"([-\\d.]+)\" text-anchor=\"(\\w+)\" font-size=\"([\\d.]+)\"[^>]*>([^<]*)</text>");
    private static final Pattern VIEW = Pattern.compile("viewBox=\"(-?[\\d.]+) (-?[\\d.]+) (-?[\\d.]+) (-?[\\d.]+)\"");

    /** The writer reckons with a width for each letter as the widest of the usual faces have on average. */
    private static List<Placed.Box> boxes(String svg) {
        List<Placed.Box> boxes = new ArrayList<>();
        Matcher matcher = TEXT.matcher(svg);
        while (matcher.find()) {
            boxes.add(Placed.Box.of(
                    matcher.group(5).replace("&amp;", "&"),
                    Double.parseDouble(matcher.group(4)),
                    Double.parseDouble(matcher.group(1)),
                    Double.parseDouble(matcher.group(2)),
                    matcher.group(3)));
        }
        return boxes;
    }

    private static String drawn(Design design) {
        return LoopPanel.picture("Your loop", design, Units.METRIC).svg();
    }

    private static void wordsStandApart(String svg, String name) {
        List<Placed.Box> boxes = boxes(svg);
        assertTrue(boxes.size() > 15, name + svg);
        Matcher view = VIEW.matcher(svg);
        assertTrue(view.find(), svg);
        MatchResult all = view.toMatchResult();
        double left = Double.parseDouble(all.group(1));
        double top = Double.parseDouble(all.group(2));
        for (int i = 0; i < boxes.size(); i++) {
            Placed.Box box = boxes.get(i);
            for (int j = 0; j < i; j++) {
                assertFalse(box.touches(boxes.get(j)), name + ": " + box + " on " + boxes.get(j) + "\n" + svg);
            }
            assertTrue(box.left() >= left && box.top() >= top, name + ": " + box + svg);
            assertTrue(box.right() <= left + Double.parseDouble(all.group(3)), name + ": " + box + svg);
            assertTrue(box.bottom() <= top + Double.parseDouble(all.group(4)), name + ": " + box + svg);
        }
    }

    @Test
    void noWordsStandOnWords() {
        for (Design design : RandomHouses.withDwellings(60, 5)) {
            wordsStandApart(drawn(design), design.name());
        }
    }

    @Test
    void norWithAnotherHouseInTheFrame() {
        List<Design> designs = RandomHouses.withDwellings(20, 7);
        for (int i = 1; i < designs.size(); i++) {
            LoopSvg.Scene both = new LoopSvg.Scene(
                    Drawing.of(designs.get(i)),
                    Optional.of(Currents.of(designs.get(i), 40)),
                    Optional.of(new HouseSvg.Ghost(Drawing.of(designs.get(i - 1)), "as tried")));
            String svg = LoopSvg.picture("Both", both, Measure::metric).svg();
            wordsStandApart(svg, designs.get(i).name());
            assertTrue(svg.contains("lc-ghost-stroke"));
            assertTrue(svg.contains("as tried"));
        }
    }

    @Test
    void everyMarkAndLevelIsThere() {
        for (Design design : RandomHouses.withDwellings(20, 3)) {
            String svg = drawn(design);
            Drawing drawing = Drawing.of(design);
            List<Drawing.Line> pipes = new ArrayList<>(drawing.pipes());
            pipes.addAll(drawing.taps());
            for (Drawing.Line pipe : pipes) {
                assertTrue(svg.contains(">" + pipe.mark() + "<") || svg.contains(">" + pipe.mark() + " "), pipe.mark());
            }
            for (Drawing.Level level : drawing.levels()) {
                assertTrue(
                        svg.contains(">"
                                + Measure.rounded(level.heightM(), MeasureKind.LENGTH_M, 2)
                                        .metric()),
                        level.label() + svg);
            }
            drawing.ports().forEach(port -> assertTrue(svg.contains("<title>" + port.label()), port.label()));
        }
    }

    @Test
    void thereIsNoStyleInIt() {
        assertFalse(drawn(Example.orchardBothy()).contains("style="));
    }

    @Test
    void waterRunsAtItsPaceTheWayItWasComputed() {
        Design bothy = Example.orchardBothy();
        String forward = drawn(bothy);
        assertTrue(forward.contains("lc-pace-"), forward);
        assertFalse(forward.contains("lc-backward"), forward);
        Currents.Current hot = Currents.of(bothy, 40).pipes().get(3);
        // From mark to mark are 24 units; the bar below the drawing is a metre.
        Matcher bar = Pattern.compile("M20 [\\d.]+L20 [\\d.]+L([\\d.]+) ").matcher(forward);
        double perM = bar.results()
                .mapToDouble(found -> Double.parseDouble(found.group(1)) - 20)
                .reduce(0, (earlier, last) -> last);
        double periodS = 24 / perM / hot.speedMPerS();
        long pace = Math.round(Math.log(periodS / 0.4) / Math.log(1.25));
        assertTrue(forward.contains("lc-pace-" + pace + "\""), forward);
        assertTrue(
                LoopPanel.picture("", bothy, Units.METRIC).says().contains("The water runs forward"),
                LoopPanel.picture("", bothy, Units.METRIC).says());
    }

    @Test
    void itRunsBackwardOrStandsWhereItDoes() {
        Drawing drawing = Drawing.of(Example.orchardBothy());
        Currents.Current back = new Currents.Current(40, 38, -0.05);
        Currents backward = new Currents(40, -1, List.of(back, back, back, back, back));
        String svg = shown(drawing, backward).svg();
        assertTrue(svg.contains("lc-backward"), svg);
        assertTrue(shown(drawing, backward).says().contains("backward"));
        Currents.Current rest = new Currents.Current(40, 40, 0);
        Currents still = new Currents(40, 0, List.of(rest, rest, rest, rest, rest));
        String standing = shown(drawing, still).svg();
        assertTrue(standing.contains("lc-stands"), standing);
        assertFalse(standing.contains("lc-pace"), standing);
        assertTrue(shown(drawing, still).says().contains("The water stands"));
    }

    private static View.Picture shown(Drawing drawing, Currents currents) {
        return LoopSvg.picture(
                "", new LoopSvg.Scene(drawing, Optional.of(currents), Optional.empty()), Measure::metric);
    }

    @Test
    void pipesAreColouredByTheWarmthOfTheirWater() {
        assertEquals(0, WaterSvg.warmth(24.9));
        assertEquals(1, WaterSvg.warmth(25));
        assertEquals(4, WaterSvg.warmth(84.9));
        assertEquals(5, WaterSvg.warmth(85));
        assertEquals(0, WaterSvg.warmth(-20));
        assertEquals(5, WaterSvg.warmth(110));
    }

    /** A slider that moves the tank a little moves no word far: the picture grows and shrinks smoothly. */
    @Test
    void aLittleMoreTankDoesNotJump() {
        double before = Double.NaN;
        for (double base = 0.5; base < 3.5; base += 0.02) {
            Matcher view = VIEW.matcher(drawn(
                    Changes.apply(Example.orchardBothy(), "tank.baseM", String.format(Locale.ROOT, "%.2f", base))));
            assertTrue(view.find());
            double width = Double.parseDouble(view.group(3));
            assertTrue(Double.isNaN(before) || Math.abs(width - before) < 20, base + ": " + before + " to " + width);
            before = width;
        }
    }
}
