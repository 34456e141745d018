package loftcoil.engine.tank;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.fault.RefusedException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TankShapeTest {

    @Test
    void areasOfARoundTankFollowFromVolumeAndHeight() {
        UprightCylinder tank = new UprightCylinder(Math.PI / 4 * 0.25 * 0.8, 0.8);
        assertEquals(0.5, tank.diameterM(), 1e-12);
        assertEquals(Math.PI * 0.5 * 0.8, tank.sideM2(), 1e-12);
        assertEquals(Math.PI * 0.5 * 0.8 + 2 * Math.PI / 4 * 0.25, tank.surfaceM2(), 1e-12);
    }

    @Test
    void areasOfABoxFollowFromItsSides() {
        Box tank = new Box(0.6, 0.4, 0.5);
        assertEquals(0.12, tank.volumeM3(), 1e-12);
        assertEquals(1.0, tank.sideM2(), 1e-12);
        assertEquals(1.48, tank.surfaceM2(), 1e-12);
        assertEquals(0.12, Box.square(0.12, 0.5).volumeM3(), 1e-12);
    }

    @ParameterizedTest
    @CsvSource({"NaN, 0.7, volumeM3", "-0.1, 0.7, volumeM3", "0.12, 0, heightM", "0.12, Infinity, heightM"})
    void refusesSizesThatCannotBe(double volumeM3, double heightM, String path) {
        RefusedException refused = assertThrows(RefusedException.class, () -> new UprightCylinder(volumeM3, heightM));
        assertEquals(path, refused.faults().get(0).path());
    }

    @Test
    void refusesAllPortsOutsideTheTankAtOnce() {
        Ports ports = new Ports(0.05, 0.9, 0.8, 0.66, 0.02);
        RefusedException refused =
                assertThrows(RefusedException.class, () -> SafeLevel.of(new UprightCylinder(0.12, 0.7), ports, 0.05));
        assertEquals(
                List.of("returnM", "drawM"),
                refused.faults().stream().map(Fault::path).toList());
    }

    @Test
    void refusesPortsThatAreNotNumbersAllAtOnce() {
        RefusedException refused =
                assertThrows(RefusedException.class, () -> new Ports(Double.NaN, -1, 0.6, 0.66, Double.NaN));
        assertEquals(
                List.of("coldM", "returnM", "boreM"),
                refused.faults().stream().map(Fault::path).toList());
    }
}
