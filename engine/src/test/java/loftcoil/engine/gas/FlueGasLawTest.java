package loftcoil.engine.gas;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import loftcoil.engine.fault.RefusedException;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;

/** What must hold of any flue gas. */
class FlueGasLawTest {

    @Property(seed = "20261125")
    void temperatureAndHeatAreInverse(
            @ForAll @DoubleRange(min = 0, max = 0.2) @Scale(6) double carbonDioxide,
            @ForAll @DoubleRange(min = 0, max = 0.4) @Scale(6) double water,
            @ForAll @DoubleRange(min = -40, max = 2500) @Scale(6) double tempC) {
        FlueGas gas = new FlueGas(carbonDioxide, water, 0.1);
        assertEquals(tempC, gas.tempC(gas.enthalpyJPerKg(tempC)), 1e-7);
    }

    /** Heat capacity is the slope of the heat, also across the joint of the polynomials at 1000 K. */
    @Property(seed = "20261125")
    void heatCapacityIsTheSlope(@ForAll @DoubleRange(min = -30, max = 2400) @Scale(6) double tempC) {
        FlueGas gas = new FlueGas(0.1, 0.12, 0.08);
        double slope = (gas.enthalpyJPerKg(tempC + 0.5) - gas.enthalpyJPerKg(tempC - 0.5));
        assertEquals(slope, gas.specificHeatJPerKgK(tempC), 1e-4 * slope);
    }

    @Property(seed = "20261125")
    void positiveAndFinite(
            @ForAll @DoubleRange(min = 0, max = 0.2) @Scale(6) double carbonDioxide,
            @ForAll @DoubleRange(min = 0, max = 0.4) @Scale(6) double water,
            @ForAll @DoubleRange(min = -40, max = 2500) @Scale(6) double tempC) {
        FlueGas gas = new FlueGas(carbonDioxide, water, 0.1);
        GasTransport transport = gas.transport(tempC);
        assertTrue(transport.viscosityPaS() > 5e-6 && transport.viscosityPaS() < 2e-4);
        assertTrue(transport.conductivityWPerMK() > 0.01 && transport.conductivityWPerMK() < 0.4);
        assertTrue(gas.prandtl(tempC) > 0.6 && gas.prandtl(tempC) < 1.0);
    }

    @Example
    void sharesAreChecked() {
        assertThrows(RefusedException.class, () -> new FlueGas(-0.1, 0, 0));
        assertThrows(RefusedException.class, () -> new FlueGas(0, Double.NaN, 0));
        assertThrows(RefusedException.class, () -> new FlueGas(0.5, 0.4, 0.2));
        FlueGas gas = new FlueGas(0.1, 0.1, 0.1);
        for (double bad : new double[] {-41, 2501, Double.NaN, Double.POSITIVE_INFINITY}) {
            assertThrows(RefusedException.class, () -> gas.enthalpyJPerKg(bad));
            assertThrows(RefusedException.class, () -> gas.transport(bad));
        }
        assertThrows(RefusedException.class, () -> gas.tempC(1e8));
        assertThrows(RefusedException.class, () -> gas.dewPointC(Double.NaN));
    }

    /** No vapour, no dew. */
    @Example
    void dryGasHasNoDew() {
        assertEquals(0, FlueGas.dryAir().dewPointC(101_325));
    }
}
