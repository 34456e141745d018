package loftcoil.engine.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.Example;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DrawingTest {

    private static final Design BOTHY = Example.orchardBothy();

    @ParameterizedTest
    @ValueSource(doubles = {-3, -1.5, 0.4, 2.2, 5})
    void pipesJoinUpFromPortToPortAtTheirLevels(double baseM) {
        Drawing drawing = Drawing.of(BOTHY.withTankBaseM(baseM));
        Drawing.Point at = drawing.ports().get(0).at();
        for (Drawing.Line pipe : drawing.pipes()) {
            Drawing.Point start = pipe.points().get(0);
            assertEquals(at.xM(), start.xM(), 1e-9, pipe.name());
            assertEquals(at.yM(), start.yM(), 1e-9, pipe.name());
            at = pipe.points().get(pipe.points().size() - 1);
        }
        assertEquals(drawing.ports().get(1).at().xM(), at.xM(), 1e-9);
        assertEquals(drawing.ports().get(1).at().yM(), at.yM(), 1e-9);
    }

    @Test
    void everyPipeIsDrawnAtItsLength() {
        Drawing drawing = Drawing.of(BOTHY);
        List<Double> lengths = List.of(1.8, 1.2, 1.6, 1.5, 1.4);
        for (int i = 0; i < lengths.size(); i++) {
            assertEquals(lengths.get(i), length(drawing.pipes().get(i)), 1e-9);
        }
    }

    @Test
    void portsLieOnTheTankAndAllInsideTheBounds() {
        Drawing drawing = Drawing.of(BOTHY);
        Drawing.TankBox tank = drawing.tank();
        for (Drawing.Port port : drawing.ports()) {
            assertTrue(port.at().xM() >= tank.leftM() - 1e-9, port.label());
            assertTrue(port.at().xM() <= tank.leftM() + tank.widthM() + 1e-9, port.label());
        }
        Drawing.Bounds bounds = drawing.bounds();
        assertTrue(bounds.bottomM() <= 0 && bounds.topM() >= 2.9);
        drawing.pipes().forEach(pipe -> pipe.points()
                .forEach(point -> assertTrue(point.xM() >= bounds.leftM() && point.xM() <= bounds.rightM())));
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
        assertTrue(new Drawing.Run("x", 1.5, 1.5, java.util.Optional.empty())
                .slopeMmPerM()
                .isEmpty());
    }

    private static double length(Drawing.Line line) {
        double sum = 0;
        for (int i = 1; i < line.points().size(); i++) {
            Drawing.Point from = line.points().get(i - 1);
            Drawing.Point to = line.points().get(i);
            sum += Math.hypot(to.xM() - from.xM(), to.yM() - from.yM());
        }
        return sum;
    }
}
