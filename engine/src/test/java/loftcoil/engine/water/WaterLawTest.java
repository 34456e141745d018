package loftcoil.engine.water;

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

/** What must hold of water at every temperature. */
class WaterLawTest {

    private static final List<DoubleUnaryOperator> ALL = List.of(
            Water::densityKgPerM3,
            Water::expansionPerK,
            Water::specificHeatJPerKgK,
            Water::viscosityPaS,
            Water::conductivityWPerMK,
            Water::prandtl,
            Saturation::pressurePa);

    @Property(seed = "20261125")
    void finiteInRange(@ForAll @DoubleRange(min = 0, max = 110) @Scale(6) double tempC) {
        for (DoubleUnaryOperator property : ALL) {
            assertTrue(Double.isFinite(property.applyAsDouble(tempC)));
        }
        assertTrue(Water.densityKgPerM3(tempC) > 950 && Water.densityKgPerM3(tempC) < 1000);
        assertTrue(Water.viscosityPaS(tempC) > 0 && Water.conductivityWPerMK(tempC) > 0);
    }

    @Property(seed = "20261125")
    void refusedOutside(@ForAll("outside") double tempC) {
        for (DoubleUnaryOperator property : ALL.subList(0, 6)) {
            Fault fault = assertThrows(RefusedException.class, () -> property.applyAsDouble(tempC))
                    .faults()
                    .get(0);
            assertEquals("tempC", fault.path());
            assertEquals("0 to 110 °C", fault.allowed());
            assertEquals(tempC, Double.parseDouble(fault.given()), 0.5);
        }
    }

    @Provide
    Arbitrary<Double> outside() {
        return Arbitraries.oneOf(
                Arbitraries.doubles().lessThan(-0.01),
                Arbitraries.doubles().greaterThan(110.01),
                Arbitraries.of(Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, Math.nextUp(110.0)));
    }

    /** The expansion is the slope of the density's logarithm: equation 2 must be the derivative of equation 1. */
    @Property(seed = "20261125")
    void expansionIsTheSlopeOfDensity(@ForAll @DoubleRange(min = 1, max = 109) @Scale(6) double tempC) {
        double step = 1e-3;
        double slope = (Math.log(Water.densityKgPerM3(tempC - step)) - Math.log(Water.densityKgPerM3(tempC + step)))
                / (2 * step);
        assertEquals(slope, Water.expansionPerK(tempC), 1e-9);
    }

    /** Water is densest at 3.98 °C (CRC Handbook, from memory) and lighter on either side, all the way. */
    @Example
    void densestNearFourDegrees() {
        double above = 3.98 + 0.05;
        double below = 3.98 - 0.05;
        assertTrue(Water.expansionPerK(below) < 0 && Water.expansionPerK(above) > 0);
        for (double tempC = 5; tempC < 110; tempC += 0.5) {
            assertTrue(Water.densityKgPerM3(tempC + 0.5) < Water.densityKgPerM3(tempC));
            assertTrue(Water.viscosityPaS(tempC + 0.5) < Water.viscosityPaS(tempC));
        }
    }

    /** Equations 30 and 31 of IF97 are one curve seen from both sides. */
    @Property(seed = "20261125")
    void boilingTemperatureAndPressureAreInverse(@ForAll @DoubleRange(min = 0.01, max = 373) @Scale(6) double tempC) {
        assertEquals(tempC, Saturation.tempC(Saturation.pressurePa(tempC)), 1e-6);
    }

    @Property(seed = "20261125")
    void boilingRefusedOutside(@ForAll("noPressure") double pressurePa) {
        Fault fault = assertThrows(RefusedException.class, () -> Saturation.tempC(pressurePa))
                .faults()
                .get(0);
        assertEquals("pressurePa", fault.path());
        assertTrue(fault.allowed().endsWith("Pa"));
    }

    @Provide
    Arbitrary<Double> noPressure() {
        return Arbitraries.oneOf(
                Arbitraries.doubles().lessThan(611),
                Arbitraries.doubles().greaterThan(22.065e6),
                Arbitraries.of(Double.NaN, Double.POSITIVE_INFINITY));
    }
}
