package loftcoil.engine.sun;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** Duffie and Beckman, 4th ed., Example 5.1.1: glass of index 1.526 (from memory, recomputed). */
class FresnelReferenceTest {

    private static final double GLASS = 1.526;

    @Test
    void squareOn() {
        assertEquals(0.0434, Fresnel.perpendicular(0, GLASS), 1e-4);
        assertEquals(0.0434, Fresnel.parallel(0, GLASS), 1e-4);
    }

    @Test
    void atSixtyDegrees() {
        assertEquals(34.58, Fresnel.refractedDeg(60, GLASS), 0.01);
        assertEquals(0.185, Fresnel.perpendicular(60, GLASS), 0.001);
        assertEquals(0.001, Fresnel.parallel(60, GLASS), 0.0005);
        assertEquals(0.093, (Fresnel.perpendicular(60, GLASS) + Fresnel.parallel(60, GLASS)) / 2, 5e-4);
    }

    @Test
    void nothingPolarisedAlongThePlaneIsReflectedAtBrewstersAngle() {
        // Brewster's law: tan of the angle is the index.
        assertEquals(0, Fresnel.parallel(Math.toDegrees(Math.atan(GLASS)), GLASS), 1e-12);
    }
}
