package loftcoil.engine.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import loftcoil.engine.design.Changes;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.Dwelling;
import loftcoil.engine.design.Example;
import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.sheet.Drawing.Plan;
import loftcoil.engine.sheet.Drawing.PlanRun;
import loftcoil.engine.sheet.Drawing.Point;
import loftcoil.engine.sheet.Drawing.Role;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The house from above: each run has its length and leads where it was told, and a little more of anything moves it a little. */
class HousePlanTest {

    private static final Design BOTHY = Example.orchardBothy();

    private static List<Design> many() {
        List<Design> designs = new ArrayList<>(RandomDesigns.some(60, 17));
        for (Dwelling dwelling : Dwelling.values()) {
            designs.add(dwelling.design());
        }
        return designs;
    }

    private static double alongM(PlanRun run) {
        double along = 0;
        List<Point> points = run.pipe().points();
        for (int i = 1; i < points.size(); i++) {
            along += Math.hypot(
                    points.get(i).xM() - points.get(i - 1).xM(),
                    points.get(i).yM() - points.get(i - 1).yM());
        }
        return along;
    }

    @Test
    void everyRunHasItsLengthAndHangsOnTheOneBefore() {
        for (Design design : many()) {
            Drawing drawing = Drawing.of(design);
            List<PlanRun> runs = drawing.plan().runs();
            assertEquals(drawing.pipes().size(), runs.size());
            for (int i = 0; i < runs.size(); i++) {
                PlanRun run = runs.get(i);
                assertEquals(drawing.pipes().get(i).mark(), run.pipe().mark());
                if (run.pipe().role() != Role.COIL) {
                    // As in elevation: only where both pipes stand upright is one drawn up to 12 cm longer than it is.
                    double over = alongM(run) - run.pipe().run().levelRunM();
                    assertTrue(over > -1e-9 && over < 0.12, design.name() + " " + run.pipe().mark() + " " + over);
                }
                if (i > 0) {
                    assertEquals(runs.get(i - 1).pipe().end().xM(), run.pipe().start().xM(), 1e-9);
                    assertEquals(runs.get(i - 1).pipe().end().yM(), run.pipe().start().yM(), 1e-9);
                }
            }
        }
    }

    @Test
    void bothPipesMeetTheTankWhereNobodyTookACompass() {
        for (Design design : many()) {
            assertEquals(0, Drawing.of(design).plan().missM(), design.name());
            assertFalse(Drawing.of(design).plan().surveyed());
        }
    }

    /** The hot pipe east, the cold one back west: a closed plan, and the riser stands upright. */
    @Test
    void surveyedRunsLeadWhereTheCompassSaid() {
        Map<String, Double> taken = Map.of(
                BOTHY.hotLegs().get(1).name(), 90.0,
                BOTHY.coldLegs().get(1).name(), 180.0);
        Plan plan = Drawing.of(BOTHY, new Headings(taken)).plan();
        assertTrue(plan.surveyed());
        PlanRun hot = plan.runs().get(4);
        PlanRun cold = plan.runs().get(1);
        assertEquals(90, hot.headingDeg().orElseThrow());
        assertEquals(180, cold.headingDeg().orElseThrow());
        // South lies a quarter turn to the right of east.
        double right = turnedDeg(hot) - turnedDeg(cold);
        assertEquals(90, right, 1e-6);
        assertEquals(BOTHY.hotLegs().get(1).levelRunM(), alongM(hot), 1e-9);
        // The cold pipe ends a good metre beside the tank, and that is said.
        assertTrue(plan.missM() > 0.5, "" + plan.missM());
    }

    private static double turnedDeg(PlanRun run) {
        Point from = run.pipe().start();
        Point to = run.pipe().end();
        return Math.toDegrees(Math.atan2(to.yM() - from.yM(), to.xM() - from.xM()));
    }

    @Test
    void northPanesAndRunsAgree() {
        for (double facing : new double[] {0, 90, 135, 180, 300}) {
            Design design = Changes.apply(BOTHY, "window.azimuthDeg", Double.toString(facing));
            for (Headings headings : List.of(
                    Headings.UNKNOWN,
                    new Headings(Map.of(BOTHY.hotLegs().get(1).name(), 40.0)))) {
                Plan plan = Drawing.of(design, headings).plan();
                Drawing.PlanPanes panes = plan.panes().orElseThrow();
                double up = Math.toDegrees(Math.atan2(
                        panes.ahead().xM() - panes.middle().xM(),
                        panes.ahead().yM() - panes.middle().yM()));
                double fromNorth = up - plan.northDeg().orElseThrow();
                assertEquals(0, Math.IEEEremainder(fromNorth - facing, 360), 1e-6, facing + " " + plan.northDeg());
            }
        }
    }

    @Test
    void withoutPanesAndCompassNobodyKnowsWhereNorthIs() {
        assertTrue(Drawing.of(Dwelling.MARSH_HUT.design()).plan().northDeg().isEmpty());
    }

    @Test
    void theTankIsAsLargeAsInElevation() {
        for (Design design : many()) {
            Drawing drawing = Drawing.of(design);
            List<Point> outline = drawing.plan().tank();
            double wide = outline.stream().mapToDouble(Point::xM).max().orElseThrow()
                    - outline.stream().mapToDouble(Point::xM).min().orElseThrow();
            assertEquals(drawing.tank().widthM(), wide, 1e-6, design.name());
            Drawing.Bounds walls = drawing.plan().walls();
            for (PlanRun run : drawing.plan().runs()) {
                run.pipe()
                        .points()
                        .forEach(point -> assertTrue(point.xM() > walls.leftM()
                                && point.xM() < walls.rightM()
                                && point.yM() > walls.bottomM()
                                && point.yM() < walls.topM()));
            }
        }
    }

    @ParameterizedTest
    @CsvSource({
        "tank.baseM, -1, 3.5, 0.01",
        "coil.lengthM, 0.8, 20, 0.01",
        "hotLegs.runM, 0, 6, 0.01",
        "coldLegs.runM, 0, 6, 0.01",
        "tank.volumeL, 40, 300, 1",
        "window.tiltDeg, 0, 90, 0.5"
    })
    void nothingJumps(String change, double from, double to, double by) {
        Optional<List<Point>> before = Optional.empty();
        int compared = 0;
        for (double value = from; value <= to; value += by) {
            Optional<List<Point>> now = places(change, value);
            if (before.isPresent() && now.isPresent()) {
                for (int i = 0; i < now.get().size(); i++) {
                    Point was = before.get().get(i);
                    Point is = now.get().get(i);
                    double moved = Math.hypot(is.xM() - was.xM(), is.yM() - was.yM());
                    // Height of the tank goes with the slopes, so that a level run changes with the root of what is left of its length.
                    assertTrue(moved < 0.12, change + " " + value + " moves place " + i + " by " + moved + " m");
                }
                compared++;
            }
            before = now;
        }
        assertTrue(compared > 40, change + ": only " + compared + " compared");
    }

    private static Optional<List<Point>> places(String change, double value) {
        try {
            Design design = Changes.apply(BOTHY, change, String.format(Locale.ROOT, "%.4f", value));
            Plan plan = Drawing.of(design).plan();
            List<Point> places = new ArrayList<>(plan.tank());
            plan.runs().forEach(run -> places.addAll(run.pipe().points()));
            plan.panes().ifPresent(panes -> places.addAll(panes.corners()));
            return Optional.of(places);
        } catch (RefusedException refused) {
            return Optional.empty();
        }
    }
}
