package loftcoil.engine.heat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.fault.RefusedException;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;

/** Limits, symmetry and refusals of the correlations. */
class FilmLawTest {

    /** Without convection the correlations leave the square of their first number. */
    @Example
    void conductionLimits() {
        assertEquals(0.36, ChurchillChu.horizontalCylinder(0, 0.7), 1e-12);
        assertEquals(0.680625, ChurchillChu.verticalPlate(0, 0.7), 1e-12);
    }

    @Property(seed = "20261125")
    void naturalConvectionGrows(@ForAll @DoubleRange(min = 1, max = 9e11) @Scale(6) double rayleigh) {
        assertTrue(
                ChurchillChu.horizontalCylinder(rayleigh * 1.1, 0.7) > ChurchillChu.horizontalCylinder(rayleigh, 0.7));
        assertTrue(ChurchillChu.verticalPlate(rayleigh * 1.1, 7) > ChurchillChu.verticalPlate(rayleigh, 7));
    }

    @Property(seed = "20261125")
    void insideFilmIsContinuousAndGrows(@ForAll @DoubleRange(min = 0.6, max = 20) @Scale(6) double prandtl) {
        for (InsideFilm.Wall wall : InsideFilm.Wall.values()) {
            for (double joint : List.of(2300.0, 4000.0)) {
                double below = InsideFilm.nusselt(joint * (1 - 1e-9), prandtl, wall);
                assertEquals(below, InsideFilm.nusselt(joint * (1 + 1e-9), prandtl, wall), 1e-5 * below);
            }
            for (double re = 2300; re < 20_000; re += 50) {
                assertTrue(InsideFilm.nusselt(re + 50, prandtl, wall) > InsideFilm.nusselt(re, prandtl, wall));
            }
        }
    }

    /** Stefan and Boltzmann: nothing between equals, the same both ways, and the film tends to 4 ε σ T³. */
    @Property(seed = "20261125")
    void radiation(
            @ForAll @DoubleRange(min = -50, max = 500) @Scale(6) double one,
            @ForAll @DoubleRange(min = -50, max = 500) @Scale(6) double other) {
        assertEquals(0, GreyRadiation.fluxWPerM2(one, one, 0.9), 0);
        double there = GreyRadiation.fluxWPerM2(one, other, 0.9);
        assertEquals(-there, GreyRadiation.fluxWPerM2(other, one, 0.9), 1e-9 * Math.abs(there));
        double kelvin = one + 273.15;
        double limit = 4 * 0.9 * 5.670374419e-8 * kelvin * kelvin * kelvin;
        assertEquals(limit, GreyRadiation.filmWPerM2K(one, one, 0.9), 1e-12 * limit);
        double law = 0.9 * 5.670374419e-8 * (Math.pow(kelvin, 4) - Math.pow(other + 273.15, 4));
        assertEquals(law, there, 1e-9 * (Math.abs(law) + 1));
    }

    /** Layers add: a wall cut in two resists as much as the whole. */
    @Property(seed = "20261125")
    void layersAdd(@ForAll @DoubleRange(min = 0.01, max = 0.1) @Scale(6) double cut) {
        double whole = RoundWall.layerKMPerW(0.01, 0.1, 0.04);
        assertEquals(whole, RoundWall.layerKMPerW(0.01, cut, 0.04) + RoundWall.layerKMPerW(cut, 0.1, 0.04), 1e-12);
        assertEquals(0, RoundWall.layerKMPerW(cut, cut, 0.04), 0);
    }

    /** At the critical radius, and nowhere else, more lagging changes nothing: the derivative of the sum is zero there. */
    @Property(seed = "20261125")
    void criticalRadiusIsWhereLossIsGreatest(
            @ForAll @DoubleRange(min = 0.02, max = 0.1) @Scale(6) double conductivity,
            @ForAll @DoubleRange(min = 3, max = 15) @Scale(6) double film) {
        double radius = RoundWall.criticalRadiusM(conductivity, film);
        double bare = radius / 5;
        double at = lagged(bare, radius, conductivity, film);
        assertTrue(lagged(bare, radius * 1.02, conductivity, film) > at);
        assertTrue(lagged(bare, radius * 0.98, conductivity, film) > at);
    }

    private static double lagged(double bareRadius, double radius, double conductivity, double film) {
        return RoundWall.layerKMPerW(2 * bareRadius, 2 * radius, conductivity) + RoundWall.filmKMPerW(2 * radius, film);
    }

    @Property(seed = "20261125")
    void crossFlowGrowsAndTendsToThePublishedFloor(@ForAll @DoubleRange(min = 1, max = 1e6) @Scale(6) double reynolds) {
        double nusselt = ChurchillBernstein.nusselt(reynolds, 0.7);
        assertTrue(nusselt > 0.3 && ChurchillBernstein.nusselt(reynolds * 1.01, 0.7) > nusselt);
    }

    @Property(seed = "20261125")
    void refusedOutside(@ForAll("bad") double bad) {
        refused("rayleigh", "0 to 1000000000000", x -> ChurchillChu.horizontalCylinder(x, 0.7), bad);
        refused("rayleigh", "0 to 1000000000000", x -> ChurchillChu.verticalPlate(x, 0.7), bad);
        refused("prandtl", "0.001 to 10000", x -> ChurchillChu.verticalPlate(1e6, x), bad);
        refused("reynolds", "0.001 to 10000000", x -> ChurchillBernstein.nusselt(x, 0.7), bad);
        refused("reynolds", "0 to 5000000", x -> InsideFilm.nusselt(x, 3, InsideFilm.Wall.EVEN_FLUX), bad);
        refused("prandtl", "0.5 to 2000", x -> InsideFilm.nusselt(1e4, x, InsideFilm.Wall.EVEN_FLUX), bad);
        refused("darcy", "0.0001 to 0.2", x -> InsideFilm.gnielinski(1e4, 3, x), bad);
        refused("surfaceC", "-100 to 1500 °C", x -> GreyRadiation.fluxWPerM2(x * 1000, 20, 0.9), bad);
        refused("emissivity", "0 to 1", x -> GreyRadiation.filmWPerM2K(20, 20, x), bad);
        refused("outerDiameterM", "0.0001 to 10 m", x -> RoundWall.layerKMPerW(0.01, x, 0.04), bad);
        refused("conductivityWPerMK", "0.001 to 500 W/(m K)", x -> RoundWall.layerKMPerW(0.01, 0.02, x), bad);
        refused("filmWPerM2K", "0.001 to 1000000 W/(m² K)", x -> RoundWall.filmKMPerW(0.01, x), bad);
    }

    @Example
    void refusedTogether() {
        Fault slow = fault(() -> ChurchillBernstein.nusselt(0.1, 0.7));
        assertEquals("reynolds", slow.path());
        assertEquals("0.1", slow.given());
        assertTrue(slow.allowed().startsWith("at least 0.28"));
        Fault insideOut = fault(() -> RoundWall.layerKMPerW(0.02, 0.01, 0.04));
        assertEquals("outerDiameterM", insideOut.path());
        assertEquals("at least 0.02 m", insideOut.allowed());
    }

    @Provide
    Arbitrary<Double> bad() {
        return Arbitraries.oneOf(
                Arbitraries.doubles().between(-1e9, -1),
                Arbitraries.of(1e300, Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY));
    }

    private static void refused(String path, String allowed, DoubleUnaryOperator call, double bad) {
        Fault fault = fault(() -> call.applyAsDouble(bad));
        assertEquals(path, fault.path());
        assertEquals(allowed, fault.allowed());
    }

    private static Fault fault(org.junit.jupiter.api.function.Executable call) {
        return assertThrows(RefusedException.class, call).faults().get(0);
    }
}
