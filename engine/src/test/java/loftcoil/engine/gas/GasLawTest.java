package loftcoil.engine.gas;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.fault.RefusedException;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;

/** What must hold of air everywhere in range, and what is refused. */
class GasLawTest {

    private static final List<DoubleUnaryOperator> OF_TEMPERATURE = List.of(
            Air::viscosityPaS,
            Air::conductivityWPerMK,
            Air::specificHeatJPerKgK,
            Air::prandtl,
            t -> Air.densityKgPerM3(t, 1e5));

    @Property(seed = "20261125")
    void positiveAndFiniteInRange(@ForAll @DoubleRange(min = -60, max = 1000) @Scale(6) double tempC) {
        for (DoubleUnaryOperator property : OF_TEMPERATURE) {
            double value = property.applyAsDouble(tempC);
            assertTrue(value > 0 && Double.isFinite(value));
        }
        assertTrue(Air.prandtl(tempC) > 0.65 && Air.prandtl(tempC) < 0.75);
    }

    @Property(seed = "20261125")
    void temperatureRefusedOutside(@ForAll("outside") double tempC) {
        for (DoubleUnaryOperator property : OF_TEMPERATURE) {
            Fault fault = fault(() -> property.applyAsDouble(tempC));
            assertEquals("tempC", fault.path());
            assertEquals("-60 to 1000 °C", fault.allowed());
        }
    }

    /** Higher means thinner: a column of the standard atmosphere weighs what it presses (hydrostatic law). */
    @Property(seed = "20261125")
    void pressureFallsByTheWeightOfTheAir(@ForAll @DoubleRange(min = -490, max = 4990) @Scale(6) double altitudeM) {
        double drop = Atmosphere.pressurePa(altitudeM - 1) - Atmosphere.pressurePa(altitudeM + 1);
        double tempC = 15 - 0.0065 * altitudeM;
        double weight = 2 * 9.80665 * Air.densityKgPerM3(tempC, Atmosphere.pressurePa(altitudeM));
        assertEquals(weight, drop, 1e-5 * weight);
    }

    @Property(seed = "20261125")
    void altitudeAndPressureRefusedOutside(@ForAll("outside") double far) {
        Fault altitude = fault(() -> Atmosphere.pressurePa(10 * far));
        assertEquals("altitudeM", altitude.path());
        assertEquals("-500 to 5000 m", altitude.allowed());
        Fault pressure = fault(() -> Air.densityKgPerM3(20, 1000 * far));
        assertEquals("pressurePa", pressure.path());
        assertEquals("40000 to 120000 Pa", pressure.allowed());
    }

    @Provide
    Arbitrary<Double> outside() {
        return Arbitraries.oneOf(
                Arbitraries.doubles().between(-1e6, -60.5),
                Arbitraries.doubles().between(1000.5, 1e6),
                Arbitraries.of(Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY));
    }

    private static Fault fault(org.junit.jupiter.api.function.Executable call) {
        return assertThrows(RefusedException.class, call).faults().get(0);
    }
}
