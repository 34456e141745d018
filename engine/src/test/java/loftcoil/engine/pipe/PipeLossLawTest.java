package loftcoil.engine.pipe;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import loftcoil.engine.fault.Fault;
import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.heat.RoundWall;
import loftcoil.engine.water.Water;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;

/** Limits and balance of the loss of a pipe. */
class PipeLossLawTest {

    private static final Tube TUBE = TubeTable.require("tube", "EN1057 22x0.9");

    /** What the film outside carries off is what comes through the lagging: found again by halving the surface temperature. */
    @Property(seed = "20261125", tries = 300)
    void heatThroughTheLaggingIsHeatLostOutside(
            @ForAll @DoubleRange(min = 0, max = 110) @Scale(6) double waterC,
            @ForAll @DoubleRange(min = -40, max = 110) @Scale(6) double aroundC,
            @ForAll @DoubleRange(min = 0.001, max = 0.2) @Scale(6) double thicknessM) {
        double gap = waterC - aroundC;
        double flow = gap * PipeLoss.wPerMK(TUBE, new Lagging("stone wool", thicknessM), waterC, aroundC);
        OuterFilm film = new OuterFilm(TUBE.outerM() + 2 * thicknessM, OuterFilm.LAGGED);
        double low = 0;
        double high = 1;
        for (int i = 0; i < 60; i++) {
            double share = (low + high) / 2;
            double surfaceC = aroundC + share * gap;
            double outward = share / film.kMPerW(surfaceC, aroundC);
            double through = (1 - share) / layers(waterC, surfaceC, thicknessM);
            if (outward > through) {
                high = share;
            } else {
                low = share;
            }
        }
        double surfaceC = aroundC + low * gap;
        assertEquals(low * gap / film.kMPerW(surfaceC, aroundC), flow, 1e-9 * (1 + Math.abs(flow)));
    }

    private static double layers(double waterC, double surfaceC, double thicknessM) {
        double conductivity =
                LaggingTable.require("material", "stone wool").conductivityWPerMK((waterC + surfaceC) / 2);
        return RoundWall.filmKMPerW(TUBE.boreM(), 3.66 * Water.conductivityWPerMK(waterC) / TUBE.boreM())
                + RoundWall.layerKMPerW(TUBE.outerM(), TUBE.outerM() + 2 * thicknessM, conductivity);
    }

    /** Lagging of no thickness leaves the two films of a pipe that is only painted. */
    @Example
    void thinLaggingTendsToABarePipe() {
        double thin = PipeLoss.wPerMK(TUBE, new Lagging("stone wool", 1e-7), 70, 20);
        double inside = RoundWall.filmKMPerW(TUBE.boreM(), 3.66 * Water.conductivityWPerMK(70) / TUBE.boreM());
        OuterFilm film = new OuterFilm(TUBE.outerM(), OuterFilm.LAGGED);
        double surfaceC = 70 - 50 * thin * inside;
        assertEquals(1 / (inside + film.kMPerW(surfaceC, 20)), thin, 1e-4 * thin);
        double bare = PipeLoss.wPerMK(TUBE, Lagging.NONE, 70, 20);
        assertTrue(bare < thin, "dull copper radiates less than a painted pipe");
        assertEquals(bare, PipeLoss.wPerMK(TUBE, new Lagging("stone wool", 0), 70, 20), 0);
    }

    /** Under very thick lagging the films hardly count: what is left is ln(r2/r1)/2πk. */
    @Example
    void thickLaggingTendsToTheLayerAlone() {
        double loss = PipeLoss.wPerMK(TUBE, new Lagging("stone wool", 0.5), 70, 20);
        double meanC = (70 + 20) / 2.0;
        double layer = RoundWall.layerKMPerW(
                TUBE.outerM(),
                TUBE.outerM() + 1,
                LaggingTable.require("material", "stone wool").conductivityWPerMK(meanC));
        assertEquals(1 / layer, loss, 0.02 / layer);
        assertTrue(loss < 1 / layer);
    }

    /** k/h is about 4 mm for stone wool in a room, less than the radius of the tube: every millimetre helps. */
    @Property(seed = "20261125", tries = 100)
    void lossFallsWithThicknessBeyondTheCriticalRadius(
            @ForAll @DoubleRange(min = 30, max = 110) @Scale(6) double waterC) {
        double before = PipeLoss.wPerMK(TUBE, new Lagging("stone wool", 0.002), waterC, 15);
        for (double thicknessM = 0.004; thicknessM <= 0.2; thicknessM += 0.002) {
            double loss = PipeLoss.wPerMK(TUBE, new Lagging("stone wool", thicknessM), waterC, 15);
            assertTrue(loss < before, thicknessM + " m");
            before = loss;
        }
    }

    /** How much the film inside can hold back at most, which is how much faster flow could add: as documented. */
    @Example
    void theFilmInsideHoldsBackLittle() {
        for (String name : new String[] {"EN1057 15x0.7", "EN1057 22x0.9", "EN1057 28x1.2"}) {
            Tube tube = TubeTable.require("tube", name);
            double inside = RoundWall.filmKMPerW(tube.boreM(), 3.66 * Water.conductivityWPerMK(95) / tube.boreM());
            assertTrue(inside * PipeLoss.wPerMK(tube, Lagging.NONE, 95, 20) < 1 / 8.0, name);
            assertTrue(inside * PipeLoss.wPerMK(tube, new Lagging("elastomeric foam", 0.013), 95, 20) < 1 / 20.0, name);
        }
    }

    /** No jump and no spike where the water is as warm as the room, bare or lagged. */
    @Example
    void smoothThroughEqualTemperatures() {
        for (Lagging lagging : new Lagging[] {Lagging.NONE, new Lagging("elastomeric foam", 0.013)}) {
            double step = 0.1;
            for (double waterC = 12; waterC < 28; waterC += step) {
                double middle = PipeLoss.wPerMK(TUBE, lagging, waterC, 20);
                double bend = PipeLoss.wPerMK(TUBE, lagging, waterC - step, 20)
                        + PipeLoss.wPerMK(TUBE, lagging, waterC + step, 20)
                        - 2 * middle;
                assertTrue(Math.abs(bend) < 1e-3 * middle, "at " + waterC);
            }
            assertTrue(PipeLoss.wPerMK(TUBE, lagging, 20, 20) > 0);
        }
    }

    @Property(seed = "20261125")
    void finiteForEveryTubeAndLagging(
            @ForAll("tubes") String tube,
            @ForAll("laggings") String material,
            @ForAll @DoubleRange(min = 0, max = 110) @Scale(6) double waterC,
            @ForAll @DoubleRange(min = -40, max = 250) @Scale(6) double aroundC) {
        for (double thicknessM : new double[] {0, 0.009, 0.5}) {
            double loss = PipeLoss.wPerMK(
                    TubeTable.require("tube", tube), new Lagging(material, thicknessM), waterC, aroundC);
            assertTrue(loss > 0 && loss < 10, tube + " " + material + " " + loss);
        }
    }

    @Property(seed = "20261125", tries = 100)
    void refusedOutside(@ForAll("bad") double bad) {
        assertEquals(
                "0 to 110 °C",
                fault("waterC", () -> PipeLoss.wPerMK(TUBE, Lagging.NONE, bad, 20))
                        .allowed());
        assertEquals(
                "-40 to 250 °C",
                fault("aroundC", () -> PipeLoss.wPerMK(TUBE, Lagging.NONE, 60, bad))
                        .allowed());
        assertEquals(
                "0 to 0.5 m",
                fault("thicknessM", () -> new Lagging("stone wool", bad)).allowed());
    }

    @Example
    void unknownLaggingIsRefusedWithTheNames() {
        Fault fault = fault("lagging.material", () -> PipeLoss.wPerMK(TUBE, new Lagging("straw", 0.05), 60, 20));
        assertEquals("\"straw\"", fault.given());
        assertTrue(fault.allowed().contains("stone wool"));
    }

    @Provide
    Arbitrary<String> tubes() {
        return Arbitraries.of(TubeTable.names());
    }

    @Provide
    Arbitrary<String> laggings() {
        return Arbitraries.of(LaggingTable.names());
    }

    @Provide
    Arbitrary<Double> bad() {
        return Arbitraries.oneOf(
                Arbitraries.doubles().between(-1e6, -41),
                Arbitraries.doubles().between(251, 1e6),
                Arbitraries.of(Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY));
    }

    private static Fault fault(String path, org.junit.jupiter.api.function.Executable call) {
        Fault fault = assertThrows(RefusedException.class, call).faults().get(0);
        assertEquals(path, fault.path());
        return fault;
    }
}
