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
import loftcoil.engine.design.Roof;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The drawing of the house: all of it is there, at its level, and a little more of anything moves it a little. */
class DrawingTest {

    private static final Design BOTHY = Example.orchardBothy();

    private static List<Design> many() {
        List<Design> designs = new ArrayList<>(RandomDesigns.some(60, 12));
        for (Dwelling dwelling : Dwelling.values()) {
            designs.add(dwelling.design());
        }
        return designs;
    }

    @ParameterizedTest
    @ValueSource(doubles = {-3, -1.5, 0.4, 2.2, 5})
    void pipesJoinUpFromPortToPortAtTheirLevels(double baseM) {
        joinsUp(BOTHY.withTankBaseM(baseM));
    }

    @Test
    void everyDesignJoinsUpWithItsPortsOnTheWallOfItsTank() {
        many().forEach(DrawingTest::joinsUp);
    }

    private static void joinsUp(Design design) {
        Drawing drawing = Drawing.of(design);
        Drawing.Point at = drawing.ports().get(0).at();
        for (Drawing.Line pipe : drawing.pipes()) {
            assertEquals(at.xM(), pipe.start().xM(), 1e-9, pipe.name());
            assertEquals(at.yM(), pipe.start().yM(), 6e-3, pipe.name());
            assertEquals(pipe.run().riseM(), pipe.end().yM() - pipe.start().yM(), 1e-9, pipe.name());
            at = pipe.end();
        }
        assertEquals(drawing.ports().get(1).at().xM(), at.xM(), 1e-9);
        // A design may miss its port by 5 mm.
        assertEquals(drawing.ports().get(1).at().yM(), at.yM(), 6e-3);
        Drawing.TankBox tank = drawing.tank();
        for (Drawing.Port port : drawing.ports()) {
            double left = tank.leftM() + tank.insetM(port.at().yM());
            double right = tank.rightM() - tank.insetM(port.at().yM());
            double off =
                    Math.min(Math.abs(port.at().xM() - left), Math.abs(port.at().xM() - right));
            assertEquals(0, off, 1e-9, port.label());
        }
    }

    @Test
    void noLegIsDrawnLongerThanItIsUnlessBothPipesStandUpright() {
        for (Design design : many()) {
            for (Drawing.Line pipe : Drawing.of(design).pipes()) {
                if (pipe.role() != Drawing.Role.COIL) {
                    double across = Math.abs(pipe.end().xM() - pipe.start().xM());
                    assertTrue(across <= pipe.run().levelRunM() + 0.12, pipe.name() + " of " + design.name());
                }
            }
        }
    }

    @Test
    void oneOfTheTwoPipesIsDrawnAtItsLength() {
        for (Design design : many()) {
            Drawing drawing = Drawing.of(design);
            boolean cold = drawing.pipes().stream()
                    .filter(pipe -> pipe.role() == Drawing.Role.COLD)
                    .noneMatch(Drawing.Line::drawnShort);
            boolean hot = drawing.pipes().stream()
                    .filter(pipe -> pipe.role() == Drawing.Role.HOT)
                    .noneMatch(Drawing.Line::drawnShort);
            assertTrue(cold || hot, design.name());
        }
    }

    @Test
    void theBothyHasAllThatBelongsToIt() {
        Drawing drawing = Drawing.of(BOTHY);
        List<String> marks = new ArrayList<>();
        drawing.pipes().forEach(pipe -> marks.add(pipe.mark()));
        drawing.taps().forEach(pipe -> marks.add(pipe.mark()));
        assertEquals(List.of("C1", "C2", "F", "H1", "H2", "T1", "T2", "T3"), marks);
        assertEquals(45, drawing.house().panes().orElseThrow().tiltDeg(), 20);
        assertTrue(
                drawing.house().flue().pipe().topM() > drawing.house().heater().topM() + 1);
        assertTrue(drawing.house().fire().topM() <= drawing.house().heater().topM());
        Drawing.Bounds bounds = drawing.bounds();
        assertTrue(bounds.bottomM() <= 0 && bounds.topM() >= 2.9);
        drawing.pipes().forEach(pipe -> pipe.points()
                .forEach(point -> assertTrue(point.xM() >= bounds.leftM() && point.xM() <= bounds.rightM())));
    }

    @Test
    void panesAreDrawnAtTheirTilt() {
        for (double tilt : new double[] {0, 20, 45, 60, 90}) {
            Design design = Changes.apply(BOTHY, "window.tiltDeg", Double.toString(tilt));
            Drawing.Panes panes = Drawing.of(design).house().panes().orElseThrow();
            double drawn = Math.toDegrees(Math.atan2(
                    panes.upper().yM() - panes.lower().yM(),
                    panes.lower().xM() - panes.upper().xM()));
            assertEquals(tilt, drawn, 1e-9);
        }
    }

    @Test
    void ventOverflowAndFeedStandWhereTheyAreSaid() {
        for (Dwelling dwelling : Dwelling.values()) {
            Design design = dwelling.design();
            List<Drawing.Fixture.Kind> drawn = Drawing.of(design).house().fixtures().stream()
                    .map(Drawing.Fixture::kind)
                    .toList();
            long said = design.safety().stream()
                    .mapToLong(safety ->
                            safety.vent().filter(vent -> vent.kind().code().matches("open pipe|loose lid")).stream()
                                            .count()
                                    + safety.coldFeed().stream()
                                            .filter(feed ->
                                                    feed.overflowBoreMm().orElse(0) > 0)
                                            .count()
                                    + safety.coldFeed().stream()
                                            .filter(feed -> !feed.kind().code().equals("by hand"))
                                            .count())
                    .sum();
            assertEquals(said, drawn.size(), design.name() + drawn);
        }
    }

    @ParameterizedTest
    @EnumSource(Roof.class)
    void everyRoofStandsOverTankPipesAndHeater(Roof roof) {
        for (Design design : many()) {
            Drawing drawing = Drawing.of(Changes.apply(design, "site.roof", roof.code()));
            List<Drawing.Point> frame = drawing.house().frame();
            List<Drawing.Point> under = new ArrayList<>(List.of(
                    new Drawing.Point(drawing.tank().leftM(), drawing.tank().topM()),
                    new Drawing.Point(drawing.tank().rightM(), drawing.tank().topM()),
                    new Drawing.Point(
                            drawing.house().heater().rightM(),
                            drawing.house().heater().topM())));
            drawing.pipes().forEach(pipe -> under.addAll(pipe.points()));
            for (Drawing.Point at : under) {
                assertTrue(roofAboveM(frame, at.xM()) > at.yM(), roof + " of " + design.name() + " " + at + frame);
            }
        }
    }

    private static double roofAboveM(List<Drawing.Point> frame, double x) {
        for (int i = 1; i < frame.size() - 2; i++) {
            Drawing.Point from = frame.get(i);
            Drawing.Point to = frame.get(i + 1);
            if (x >= from.xM() && x <= to.xM()) {
                return from.yM() + (x - from.xM()) / (to.xM() - from.xM()) * (to.yM() - from.yM());
            }
        }
        throw new AssertionError("no roof above " + x + " in " + frame);
    }

    @Test
    void theRoofHasTheShapeThatWasSaidAndIsAGableWhereNobodyDid() {
        Map<Roof, List<Integer>> slopes = Map.of(
                Roof.GABLE, List.of(1, -1, 0),
                Roof.FLAT, List.of(0, -1, 0),
                Roof.DOWN_TO_TANK, List.of(-1, -1, 0),
                Roof.UP_TO_TANK, List.of(1, -1, 0));
        assertEquals(slopes.get(Roof.GABLE), slopes(BOTHY));
        slopes.forEach((roof, shape) ->
                assertEquals(shape, slopes(Changes.apply(BOTHY, "site.roof", roof.code())), roof.code()));
        assertEquals(List.of(0), slopes(Changes.apply(Dwelling.MARSH_HUT.design(), "site.roof", "flat")));
        assertEquals(
                Optional.of(Roof.FLAT), Dwelling.SOUTH_CABIN.design().site().roof());
    }

    /** Which way each piece of the roof leads from left to right: 1 up, 0 level, −1 down. */
    private static List<Integer> slopes(Design design) {
        List<Drawing.Point> roof = Drawing.of(design).house().frame();
        List<Integer> slopes = new ArrayList<>();
        for (int i = 1; i < roof.size() - 2; i++) {
            slopes.add((int) Math.signum(roof.get(i + 1).yM() - roof.get(i).yM()));
        }
        return slopes;
    }

    /** A slider of the lessons in small steps, a coil's length up to 20 m among them: nothing jumps by more than the step can explain. */
    @ParameterizedTest
    @CsvSource({
        "tank.baseM, -1, 3.5, 0.01",
        "coil.lengthM, 0.8, 20, 0.01",
        "tank.returnPortM, 0.1, 0.6, 0.005",
        "hotLegs.runM, 0, 6, 0.01",
        "tank.volumeL, 40, 300, 1",
        "window.tiltDeg, 0, 90, 0.5",
        "window.areaM2, 0.1, 3, 0.01"
    })
    void nothingJumps(String change, double from, double to, double by) {
        for (Roof roof : Roof.values()) {
            nothingJumpsUnder(roof, change, from, to, by);
        }
    }

    private static void nothingJumpsUnder(Roof roof, String change, double from, double to, double by) {
        Design house = Changes.apply(BOTHY, "site.roof", roof.code());
        Optional<List<Drawing.Point>> before = Optional.empty();
        int compared = 0;
        for (double value = from; value <= to; value += by) {
            Optional<List<Drawing.Point>> now = places(house, change, value);
            if (before.isPresent() && now.isPresent()) {
                for (int i = 0; i < now.get().size(); i++) {
                    Drawing.Point was = before.get().get(i);
                    Drawing.Point is = now.get().get(i);
                    double moved = Math.hypot(is.xM() - was.xM(), is.yM() - was.yM());
                    assertTrue(
                            moved < 0.06,
                            roof + " " + change + " " + value + " moves place " + i + " by " + moved + " m");
                }
                compared++;
            }
            before = now;
        }
        assertTrue(compared > 40, change + ": only " + compared + " compared");
    }

    private static Optional<List<Drawing.Point>> places(Design house, String change, double value) {
        Design design;
        try {
            design = Changes.apply(house, change, String.format(Locale.ROOT, "%.4f", value));
        } catch (loftcoil.engine.fault.RefusedException refused) {
            return Optional.empty();
        }
        Drawing drawing = Drawing.of(design);
        List<Drawing.Point> places = new ArrayList<>();
        drawing.pipes().forEach(pipe -> places.addAll(List.of(pipe.start(), pipe.end())));
        drawing.taps().forEach(pipe -> places.addAll(pipe.points()));
        drawing.ports().forEach(port -> places.add(port.at()));
        places.addAll(drawing.house().frame());
        drawing.house().panes().ifPresent(panes -> places.addAll(List.of(panes.upper(), panes.lower())));
        places.add(new Drawing.Point(drawing.bounds().leftM(), drawing.bounds().bottomM()));
        places.add(new Drawing.Point(drawing.bounds().rightM(), drawing.bounds().topM()));
        return Optional.of(places);
    }

    @Test
    void theCoilRisesAllTheWayHoweverLongItIs() {
        for (double length : new double[] {0.5, 1.2, 3, 8, 20}) {
            Design design = Changes.apply(BOTHY, "coil.lengthM", Double.toString(length));
            Drawing.Line coil = Drawing.of(design).pipes().get(design.coldLegs().size());
            for (int i = 1; i < coil.points().size(); i++) {
                assertTrue(coil.points().get(i).yM() > coil.points().get(i - 1).yM());
            }
        }
    }

    @Test
    void aSurveyedRunIsDrawnTheWayItLeads() {
        Map<String, Double> headings = Map.of(
                BOTHY.hotLegs().get(0).name(),
                90.0,
                BOTHY.hotLegs().get(1).name(),
                90.0,
                BOTHY.coldLegs().get(0).name(),
                270.0,
                BOTHY.coldLegs().get(1).name(),
                0.0);
        Drawing.Line square = Drawing.of(BOTHY, new Headings(headings)).pipes().get(1);
        Drawing.Line plain = Drawing.of(BOTHY).pipes().get(1);
        // It leads square out of the picture, so next to nothing is left of it.
        double across = Math.abs(square.end().xM() - square.start().xM());
        assertTrue(across < Math.abs(plain.end().xM() - plain.start().xM()) + 1, "" + across);
        assertTrue(square.drawnShort());
        joinsUp(BOTHY);
    }

    @Test
    void besideEachPipeStandWhatItIsAndHowSteep() {
        Drawing drawing = Drawing.of(BOTHY);
        Drawing.Run run = drawing.pipes().get(1).run();
        assertEquals("EN1057 22x0.9", run.tube());
        assertEquals(13, run.lagging().orElseThrow().thicknessMm());
        // It falls 0.20 m on sqrt(1.20² − 0.20²) m of level run.
        assertEquals(-1000 * 0.2 / Math.sqrt(1.4), run.slopeMmPerM().orElseThrow(), 1e-9);
        assertTrue(drawing.pipes().get(2).run().lagging().isEmpty(), "the coil is bare");
        assertTrue(
                new Drawing.Run("x", 1.5, 1.5, Optional.empty()).slopeMmPerM().isEmpty());
    }

    @Test
    void waterRunsForwardBackwardOrStands() {
        Currents bothy = Currents.of(BOTHY, 40);
        Sheet sheet = Sheet.of(BOTHY);
        assertEquals(sheet.loop().flowLPerMin(), bothy.flowLPerMin(), 1e-9);
        assertEquals(5, bothy.pipes().size());
        assertEquals(sheet.loop().coilOutC(), bothy.pipes().get(2).endC(), 1e-9);
        assertTrue(bothy.pipes().get(0).speedMPerS() > 0);
        Currents low = Currents.of(BOTHY.withTankBaseM(-1.5), 40);
        assertTrue(low.flowLPerMin() <= 0, low.toString());
        assertFalse(low.pipes().isEmpty());
    }

    /** The ball of a float valve lies on the water, inside the tank, around the end of its arm. */
    @Test
    void theFloatLiesOnTheWater() {
        Design fed = Changes.apply(BOTHY, "coldFeed.kind", "float valve");
        Drawing drawing = Drawing.of(fed);
        Drawing.Fixture valve = drawing.house().fixtures().stream()
                .filter(fixture -> fixture.kind() == Drawing.Fixture.Kind.FLOAT_VALVE)
                .findFirst()
                .orElseThrow();
        Drawing.Bounds ball = valve.box().orElseThrow();
        Drawing.Point arm = valve.points().get(valve.points().size() - 1);

        assertEquals(arm.xM(), (ball.leftM() + ball.rightM()) / 2, 1e-9);
        assertEquals(arm.yM(), (ball.bottomM() + ball.topM()) / 2, 1e-9);
        assertEquals(ball.topM() - ball.bottomM(), ball.rightM() - ball.leftM(), 1e-9);
        assertTrue(ball.leftM() > drawing.tank().leftM()
                && ball.rightM() < drawing.tank().rightM());
    }
}
