package loftcoil.engine.loop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import loftcoil.engine.design.Example;
import loftcoil.engine.fault.RefusedException;
import org.junit.jupiter.api.Test;

/** The two curves of a loop meet where the search finds its flow, and end where water would boil. */
class TrialFlowLawTest {

    private final Circuit circuit = Example.orchardBothy().circuit(40);
    private final double steady = circuit.search().forward().orElseThrow().flowKgPerS();

    @Test
    void driveEqualsResistanceAtTheSteadyFlow() {
        TrialFlow held = circuit.trial(steady).orElseThrow();
        assertEquals(held.drivePa(), held.frictionPa(), 1e-3 * held.drivePa());
    }

    @Test
    void driveFallsAndResistanceRisesWithTheFlow() {
        TrialFlow slow = circuit.trial(0.7 * steady).orElseThrow();
        TrialFlow fast = circuit.trial(1.4 * steady).orElseThrow();
        assertTrue(slow.drivePa() > slow.frictionPa() && fast.drivePa() < fast.frictionPa());
        assertTrue(slow.drivePa() > fast.drivePa() && slow.frictionPa() < fast.frictionPa());
    }

    @Test
    void aFlowTooSmallToCarryTheHeatOffIsEmpty() {
        // 2 kW into 0.005 kg/s would warm the water by 2000 / (0.005 × 4180) = 96 K, from 40 °C past boiling.
        assertTrue(circuit.trial(0.005).isEmpty());
        assertTrue(circuit.trial(0).isEmpty());
    }

    @Test
    void aFlowOutOfRangeIsRefused() {
        assertThrows(RefusedException.class, () -> circuit.trial(Double.NaN));
        assertThrows(RefusedException.class, () -> circuit.trial(101));
    }
}
