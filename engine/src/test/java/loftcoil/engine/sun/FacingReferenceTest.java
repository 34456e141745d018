package loftcoil.engine.sun;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class FacingReferenceTest {

    /** Duffie and Beckman, 4th ed., Example 1.6.1: 43 N, 45 degrees tilt facing 15 degrees west of south, 10:30 solar. */
    private static final SunAngles SUN = SunAngles.of(43, -14, -22.5);

    private static final Facing FACING = new Facing(45, 195);

    @Test
    void angleOfIncidence() {
        assertEquals(0.817, FACING.cosIncidence(SUN), 0.001);
        assertEquals(35, Math.toDegrees(Math.acos(FACING.cosIncidence(SUN))), 0.3);
    }

    @Test
    void beamRatio() {
        // Example 1.8.1, same geometry: 1.66.
        assertEquals(1.66, FACING.beamRatio(SUN), 0.01);
    }

    @Test
    void diffuseLightPassesLikeABeamAtAboutSixtyDegrees() {
        // Section 5.4 (from memory): from the sky between 54 and 60 degrees at any tilt; from the ground 90 down to 60.
        for (int tilt = 0; tilt <= 90; tilt++) {
            assertEquals(57, new Facing(tilt, 180).skyAngleDeg(), 3.0, "tilt " + tilt);
        }
        assertEquals(90, new Facing(0, 180).groundAngleDeg(), 1e-9);
        assertEquals(60, new Facing(90, 180).groundAngleDeg(), 1.0);
    }
}
