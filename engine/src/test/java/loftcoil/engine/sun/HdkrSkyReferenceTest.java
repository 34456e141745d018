package loftcoil.engine.sun;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class HdkrSkyReferenceTest {

    /**
     * Reindl, Beckman and Duffie (1990), Solar Energy 45, 9, as the documentation of pvlib-python 0.13 (irradiance.reindl)
     * writes it: DHI (A Rb + (1 - A) (1 + cos b) / 2 (1 + sqrt(BHI / GHI) sin^3(b / 2))). Worked out by hand here for 40 N,
     * tilt 40 facing south, 9:30 solar on 20 February, 289 W/m² of which 221 diffuse.
     */
    @Test
    void anHourOfFebruary() {
        SunAngles sun = SunAngles.of(40, -11.6, -37.5);
        TiltedLight light = HdkrSky.on(new Facing(40, 180), sun, new SkyLight(289, 221, 1395.8), 0.6);
        // cos zenith 0.46610, Rb 0.77716 / 0.46610 = 1.66738, A = 68 / (1395.8 x 0.46610) = 0.104525
        assertEquals((68 + 221 * 0.104525) * 1.66738, light.beamWPerM2(), 0.03);
        // 221 x 0.895475 x 0.883022 x (1 + 0.485070 x 0.040008)
        assertEquals(178.14, light.skyWPerM2(), 0.03);
        // 289 x 0.6 x (1 - 0.883022)
        assertEquals(20.284, light.groundWPerM2(), 0.001);
    }

    @Test
    void horizonBandIsWhatTheFormulaSays() {
        // The same formula with a wall: sin^3(45 degrees) = 0.353553; half the sky.
        SunAngles sun = SunAngles.of(45, 0, 0);
        TiltedLight light = HdkrSky.on(new Facing(90, 180), sun, new SkyLight(500, 180, 1400), 0.2);
        double a = 320 / (1400 * Math.cos(Math.PI / 4));
        assertEquals(180 * (1 - a) * 0.5 * (1 + 0.8 * 0.353553), light.skyWPerM2(), 1e-3);
        assertEquals(50, light.groundWPerM2(), 1e-9);
        assertEquals(320 + 180 * a, light.beamWPerM2(), 1e-9);
    }
}
