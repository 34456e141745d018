package loftcoil.engine.sun;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.LUDecomposition;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class PaneStackLawTest {

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6})
    void nothingIsLostAtAnyAngle(int panes) {
        for (double extinction : new double[] {0, 4, 25, 32, 200}) {
            PaneStack stack = new PaneStack(panes, new Glass(0.004, extinction, 1.526, 0.837));
            for (int angle = 0; angle <= 90; angle++) {
                Passage passage = stack.at(angle);
                double kept = passage.absorbed().stream()
                        .mapToDouble(Double::doubleValue)
                        .sum();
                assertEquals(1, passage.transmitted() + passage.reflected() + kept, 1e-12, "at " + angle);
                assertTrue(passage.absorbed().stream().allMatch(share -> share >= -1e-15), "at " + angle);
                assertEquals(panes, passage.absorbed().size());
            }
        }
    }

    /** Nothing is lost in coated panes either, and as much passes one way as the other (Helmholtz's reciprocity). */
    @ParameterizedTest
    @EnumSource(GlassCoat.class)
    void coatedPanesLoseNothingAndPassAlikeBothWays(GlassCoat coat) {
        for (int panes = 1; panes <= 4; panes++) {
            PaneStack stack = new PaneStack(panes, Glass.SALVAGED_FLOAT, coat);
            for (int angle = 0; angle <= 90; angle += 5) {
                Passage passage = stack.at(angle);
                double kept = passage.absorbed().stream()
                        .mapToDouble(Double::doubleValue)
                        .sum();
                assertEquals(1, passage.transmitted() + passage.reflected() + kept, 1e-12, "at " + angle);
                assertTrue(passage.absorbed().stream().allMatch(share -> share >= -1e-15), "at " + angle);
            }
            assertEquals(
                    stack.diffuse().transmitted(), stack.diffuseFromInside().transmitted(), 1e-12);
        }
    }

    @Property
    void clearPanesFollowTheCoverFormula(
            @ForAll @IntRange(min = 1, max = 6) int panes,
            @ForAll @DoubleRange(min = 0, max = 89) double angle,
            @ForAll @DoubleRange(min = 1.2, max = 1.9) double index) {
        double across = cover(panes, Fresnel.perpendicular(angle, index));
        double along = cover(panes, Fresnel.parallel(angle, index));
        PaneStack stack = new PaneStack(panes, new Glass(0.004, 0, index, 0.837));
        assertEquals((across + along) / 2, stack.at(angle).transmitted(), 1e-9);
    }

    /** The fluxes between the panes as one set of linear equations, solved by a library. */
    @Property(tries = 300)
    void agreesWithTheFluxesBetweenThePanes(
            @ForAll @IntRange(min = 1, max = 6) int panes,
            @ForAll @DoubleRange(min = 0, max = 88) double angle,
            @ForAll @DoubleRange(min = 0, max = 100) double extinction) {
        Glass glass = new Glass(0.004, extinction, 1.526, 0.837);
        double survives = new PaneStack(1, glass).survivesOnePane(angle);
        double[] across = fluxes(panes, Fresnel.perpendicular(angle, 1.526), survives);
        double[] along = fluxes(panes, Fresnel.parallel(angle, 1.526), survives);
        Passage passage = new PaneStack(panes, glass).at(angle);
        assertEquals((across[0] + along[0]) / 2, passage.transmitted(), 1e-9);
        assertEquals((across[1] + along[1]) / 2, passage.reflected(), 1e-9);
    }

    @Property
    void morePanesPassLess(
            @ForAll @IntRange(min = 1, max = 5) int panes, @ForAll @DoubleRange(min = 0, max = 89) double angle) {
        double fewer = new PaneStack(panes, Glass.SALVAGED_FLOAT).at(angle).transmitted();
        double more = new PaneStack(panes + 1, Glass.SALVAGED_FLOAT).at(angle).transmitted();
        assertTrue(more < fewer, more + " of " + fewer);
    }

    @Property
    void slantedLightPassesLess(
            @ForAll @IntRange(min = 1, max = 6) int panes, @ForAll @DoubleRange(min = 0, max = 80) double angle) {
        PaneStack stack = new PaneStack(panes, Glass.SALVAGED_FLOAT);
        assertTrue(stack.at(angle + 9).transmitted() < stack.at(angle).transmitted());
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 3, 6})
    void grazingLightIsThrownBack(int panes) {
        assertEquals(1, new PaneStack(panes, Glass.SALVAGED_FLOAT).at(90).reflected(), 1e-3);
    }

    @Property
    void beforeATankNothingIsLostEither(
            @ForAll @IntRange(min = 1, max = 6) int panes,
            @ForAll @DoubleRange(min = 0, max = 90) double angle,
            @ForAll @DoubleRange(min = 0, max = 1) double absorptance) {
        LightShares shares = new WindowLight(new PaneStack(panes, Glass.SALVAGED_FLOAT), absorptance).at(angle);
        double kept = shares.panes().stream().mapToDouble(Double::doubleValue).sum();
        assertEquals(1, shares.tank() + shares.thrownBack() + kept, 1e-12);
    }

    private static double cover(int panes, double surface) {
        return (1 - surface) / (1 + (2 * panes - 1) * surface);
    }

    /**
     * Unknowns: light going down at each of the 2N surfaces' outer and inner sides would do; here between the 2N surfaces
     * lie 2N - 1 layers, glass and air in turn, each with light down at its top and light up at its bottom.
     */
    private static double[] fluxes(int panes, double surface, double survives) {
        int layers = 2 * panes - 1;
        double[][] a = new double[2 * layers][2 * layers];
        double[] b = new double[2 * layers];
        for (int i = 0; i < layers; i++) {
            double inLayer = i % 2 == 0 ? survives : 1;
            int down = 2 * i;
            int up = down + 1;
            // Down at the top: through the surface above from the layer above, plus this layer's light up thrown back.
            a[down][down] = 1;
            a[down][up] -= surface * inLayer;
            if (i == 0) {
                b[down] = 1 - surface;
            } else {
                a[down][down - 2] -= (1 - surface) * (i % 2 == 0 ? 1 : survives);
            }
            // Up at the bottom: this layer's light down thrown back, plus through the surface below from the layer
            // below.
            a[up][up] = 1;
            a[up][down] -= surface * inLayer;
            if (i < layers - 1) {
                a[up][up + 2] -= (1 - surface) * (i % 2 == 0 ? 1 : survives);
            }
        }
        double[] light = new LUDecomposition(new Array2DRowRealMatrix(a))
                .getSolver()
                .solve(new ArrayRealVector(b))
                .toArray();
        double passed = (1 - surface) * survives * light[2 * layers - 2];
        double thrown = surface + (1 - surface) * survives * light[1];
        return new double[] {passed, thrown};
    }
}
