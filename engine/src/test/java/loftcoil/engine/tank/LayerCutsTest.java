package loftcoil.engine.tank;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** Where a tank is cut, and that water then leaves at a port's own height. */
class LayerCutsTest {

    private static final double EXACT = 1e-12;

    /** Two layers of 0.65 below the lower port, six of 0.8 up to the upper one, two thicker ones above. */
    @Test
    void betweenTwoPortsTheLayersAreAlikeAndOverTheHighestTheyAreThicker() {
        assertArrayEquals(
                new double[] {0, 0.065, 0.13, 0.21, 0.29, 0.37, 0.45, 0.53, 0.61, 0.805, 1},
                LayerCuts.atPorts(10, 0.13, 0.61),
                EXACT);
        assertArrayEquals(new double[] {0, 0.2, 0.4, 0.6, 1}, LayerCuts.atPorts(4, 0.6), EXACT);
    }

    /** A port a hair from the base or from another gets no layer of its own. */
    @Test
    void aPortTooNearToAnotherCutGetsNone() {
        assertArrayEquals(new double[] {0, 0.25, 0.5, 0.75, 1}, LayerCuts.atPorts(4, 0.01, 0.5, 0.52, 0.99), EXACT);
    }

    @Property(tries = 2000)
    void theCutsRiseFromBaseToWaterlineAndNoLayerIsThin(
            @ForAll @IntRange(min = 1, max = 100) int layers,
            @ForAll @DoubleRange(min = 0, max = 1) double cold,
            @ForAll @DoubleRange(min = 0, max = 1) double draw,
            @ForAll @DoubleRange(min = 0, max = 1) double back) {
        double[] cuts = LayerCuts.atPorts(layers, cold, draw, back);
        assertEquals(layers + 1, cuts.length);
        assertEquals(0, cuts[0]);
        assertEquals(1, cuts[layers]);
        // Below the highest port all are thinner, by what is saved above it.
        double highest = Math.max(cold, Math.max(draw, back));
        double usual = highest + 0.4 * (1 - highest);
        for (int i = 1; i <= layers; i++) {
            assertTrue((cuts[i] - cuts[i - 1]) * layers >= 0.5 * usual, "layer " + i + " of " + Arrays.toString(cuts));
        }
        double nearest =
                Arrays.stream(cuts).map(cut -> Math.abs(cut - cold)).min().orElseThrow();
        assertTrue(nearest * layers <= 0.6 * (layers == 1 ? 1 : usual), "the cold port is at a cut, or all but");
    }

    /** Hot water over cold, the boundary at the port: all that is above the port comes out hot, and nothing below it is moved. */
    @Test
    void waterLeavesAtThePortsOwnHeight() {
        Ports ports = new Ports(0.03, 0.31, 0.31, 1, 0);
        Layers tank = new Layers(new LayerPlan(new UprightCylinder(0.1, 1), ports, 10, 10, 100, true));
        double aboveKg = tank.massKg() * (1 - 0.03);
        tank.circulate(aboveKg * 30, 60);
        double hotJ = tank.energyJ() - tank.massKg() * WaterHeat.jPerKg(10);
        double perKg = WaterHeat.jPerKg(60) - WaterHeat.jPerKg(10);
        // The port lies 0.51 of a layer up; a cut of its own would be nearer than 0.6 to the base, so the base is its
        // cut.
        assertEquals(tank.massKg() * perKg, hotJ, 0.001 * hotJ);

        Ports higher = new Ports(0.087, 0.31, 0.31, 1, 0);
        Layers cut = new Layers(new LayerPlan(new UprightCylinder(0.1, 1), higher, 10, 10, 100, true));
        cut.circulate(aboveKg * 30, 60);
        double cutHotJ = cut.energyJ() - cut.massKg() * WaterHeat.jPerKg(10);
        assertEquals(cut.massKg() * (1 - 0.087) * perKg, cutHotJ, 0.001 * cutHotJ);
    }
}
