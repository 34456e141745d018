package loftcoil.runner.show;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import loftcoil.engine.design.Changes;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.Example;
import loftcoil.engine.design.Leg;
import loftcoil.engine.sheet.Currents;
import loftcoil.engine.sheet.Drawing;
import loftcoil.engine.sheet.DrawingChange;
import loftcoil.engine.sheet.Headings;
import loftcoil.engine.words.Measure;
import loftcoil.engine.words.Units;
import org.junit.jupiter.api.Test;

/** The house from above and a rebuild in one frame: every mark is there, and no words stand on words. */
class PlanSvgTest {

    private static Headings random(Design design, Random random) {
        Map<String, Double> taken = new HashMap<>();
        List<Leg> legs = new ArrayList<>(design.hotLegs());
        legs.addAll(design.coldLegs());
        legs.forEach(leg -> taken.put(leg.name(), 5.0 * random.nextInt(72)));
        return new Headings(taken);
    }

    private static HousePen pen(double perM, double letters, HousePen.Views views, Units units) {
        return new HousePen(
                new HousePen.Size(perM, 5, letters / 3.2, letters),
                units::of,
                true,
                Map.of(),
                new HousePen.Bar(1, "1 m"),
                views);
    }

    private static void wordsStandApart(HouseSvg.Drawn drawn, String name) {
        List<List<Double>> words = drawn.words();
        assertTrue(words.size() > 4, name);
        for (int i = 0; i < words.size(); i++) {
            List<Double> one = words.get(i);
            for (int j = 0; j < i; j++) {
                List<Double> other = words.get(j);
                boolean touch = one.get(0) < other.get(2)
                        && other.get(0) < one.get(2)
                        && one.get(1) < other.get(3)
                        && other.get(1) < one.get(3);
                assertFalse(touch, name + one + other + drawn.content());
            }
            assertTrue(one.get(2) <= drawn.left() + drawn.width(), name + one + drawn.width());
            assertTrue(one.get(3) <= drawn.top() + drawn.height(), name + one + drawn.height());
        }
    }

    @Test
    void noWordsStandOnWordsAndEveryMarkIsThere() {
        Random random = new Random(12);
        for (Design design : RandomHouses.withDwellings(20, 41)) {
            for (Headings headings : List.of(Headings.UNKNOWN, random(design, random))) {
                Drawing drawing = Drawing.of(design, headings);
                for (HousePen pen : List.of(
                        pen(100, 26, HousePen.Views.SIDE, Units.METRIC),
                        pen(20, 2.9, HousePen.Views.SIDE_OVER_PLAN, Units.US),
                        pen(40, 2.9, HousePen.Views.SIDE_OVER_PLAN, Units.METRIC))) {
                    HouseSvg.Drawn drawn = HouseSvg.plan(drawing, Optional.of(Currents.of(design, 40)), pen);
                    wordsStandApart(drawn, design.name());
                    for (Drawing.PlanRun run : drawing.plan().runs()) {
                        assertTrue(
                                drawn.content()
                                        .matches("(?s).*[> ]" + run.pipe().mark() + "[<, ].*"),
                                run.pipe().mark() + drawn.content());
                    }
                    assertEquals(
                            drawing.plan().northDeg().isPresent(),
                            drawn.content().contains(">N</text>"));
                }
            }
        }
    }

    @Test
    void aSurveyedPlanSaysWhichWayEachRunLeads() {
        Design bothy = Example.orchardBothy();
        Headings taken = new Headings(Map.of(bothy.hotLegs().get(1).name(), 45.0));
        Drawing drawing = Drawing.of(bothy, taken);
        String svg = HouseSvg.plan(drawing, Optional.empty(), pen(100, 26, HousePen.Views.SIDE, Units.METRIC))
                .content();
        assertTrue(svg.contains("H2 towards north-east (45°)"), svg);
        String text = String.join("\n", HouseText.plan(drawing, Measure::metric));
        assertTrue(text.contains("H2 towards north-east (45°), 1.36 m"), text);
        // Right is north-east, so north lies an eighth of a turn to the left of right.
        assertTrue(text.contains("north is up and to the right"), text);
    }

    @Test
    void directionsHaveTheNamesOfTheCompass() {
        assertEquals("north (0°)", DrawingWords.direction(0));
        assertEquals("north (0°)", DrawingWords.direction(359.9));
        assertEquals("north-north-west (340°)", DrawingWords.direction(340));
        assertEquals("south-east (135°)", DrawingWords.direction(135));
        assertEquals("west (270°)", DrawingWords.direction(270));
    }

    @Test
    void aRebuildTellsWhatIsKeptCutOutAndAdded() {
        Design old = Example.orchardBothy();
        Design made = Changes.apply(Changes.apply(old, "hotLegs.tube", "28x1.0"), "window.panes", "2");
        DrawingChange change = DrawingChange.between(Drawing.of(old), Drawing.of(made));
        assertEquals(
                List.of(
                        "kept: C1 drop in the wall, C2 run to the heater, F coil, T1 kitchen sink, T2 wash tub,"
                                + " T3 laundry hose, tank",
                        "cut out: H1 beside the flue, H2 back to the tank, panes",
                        "added: H1 beside the flue, H2 back to the tank, panes"),
                ChangeSvg.says(change));
        HouseSvg.Drawn drawn = ChangeSvg.draw(change, pen(100, 26, HousePen.Views.SIDE, Units.METRIC));
        wordsStandApart(drawn, old.name());
        for (String words : List.of("− H1", "+ H1", "− panes", "+ panes", ">C1<", "kept: ", "cut out: ", "added: ")) {
            assertTrue(drawn.content().contains(words), words + drawn.content());
        }
        String text = String.join("\n", HouseText.change(change));
        assertTrue(text.contains("+") && text.contains("x") && text.contains("k"), text);
    }

    @Test
    void ofARandomRebuildEachThingHasOneFate() {
        List<Design> designs = RandomHouses.withDwellings(20, 77);
        for (int i = 1; i < designs.size(); i++) {
            Drawing before = Drawing.of(designs.get(i - 1));
            Drawing after = Drawing.of(designs.get(i));
            DrawingChange change = DrawingChange.between(before, after);
            wordsStandApart(
                    ChangeSvg.draw(change, pen(90, 26, HousePen.Views.SIDE, Units.METRIC)),
                    designs.get(i).name());
            for (Drawing.Line pipe : before.pipes()) {
                assertEquals(
                        1,
                        change.items().stream()
                                .filter(item -> item.fate() != DrawingChange.Fate.ADDED)
                                .filter(item -> item.mark().equals(pipe.mark()))
                                .count());
            }
            for (Drawing.Line pipe : after.pipes()) {
                assertEquals(
                        1,
                        change.items().stream()
                                .filter(item -> item.fate() != DrawingChange.Fate.CUT_OUT)
                                .filter(item -> item.mark().equals(pipe.mark()))
                                .count());
            }
        }
    }

    @Test
    void theSameHouseIsAllKept() {
        Drawing bothy = Drawing.of(Example.orchardBothy());
        DrawingChange change = DrawingChange.between(bothy, bothy);
        assertTrue(change.items().stream().allMatch(item -> item.fate() == DrawingChange.Fate.KEPT));
        assertEquals("cut out: nothing", ChangeSvg.says(change).get(1));
    }
}
