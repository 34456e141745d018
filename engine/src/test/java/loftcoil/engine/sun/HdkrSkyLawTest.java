package loftcoil.engine.sun;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class HdkrSkyLawTest {

    @Property
    void aLevelWindowSeesWhatTheGroundSees(
            @ForAll @DoubleRange(min = -80, max = 80) double latitude,
            @ForAll @DoubleRange(min = -23, max = 23) double declination,
            @ForAll @DoubleRange(min = -90, max = 90) double hourAngle,
            @ForAll @DoubleRange(min = 0, max = 1) double diffuseShare) {
        SunAngles sun = SunAngles.of(latitude, declination, hourAngle);
        if (sun.cosZenith() <= 1e-6) {
            return;
        }
        double global = 900 * sun.cosZenith();
        SkyLight light = new SkyLight(global, global * diffuseShare, 1367);
        double level = HdkrSky.on(new Facing(0, 180), sun, light, 0.2).totalWPerM2();
        assertEquals(global, level, 1e-9 * global);
    }

    @Property
    void anOvercastSkyIsEvenlyBright(
            @ForAll @DoubleRange(min = 0, max = 90) double tilt,
            @ForAll @DoubleRange(min = 0, max = 360) double azimuth,
            @ForAll @DoubleRange(min = 0, max = 1) double albedo) {
        Facing facing = new Facing(tilt, azimuth);
        TiltedLight light = HdkrSky.on(facing, SunAngles.of(46, 10, 20), new SkyLight(200, 200, 1350), albedo);
        assertEquals(0, light.beamWPerM2(), 1e-12);
        assertEquals(200 * facing.skyShare(), light.skyWPerM2(), 1e-9);
        assertEquals(200 * albedo * (1 - facing.skyShare()), light.groundWPerM2(), 1e-9);
    }

    @Property
    void noPartIsEverNegative(
            @ForAll @DoubleRange(min = -90, max = 90) double latitude,
            @ForAll @DoubleRange(min = -23, max = 23) double declination,
            @ForAll @DoubleRange(min = -180, max = 180) double hourAngle,
            @ForAll @DoubleRange(min = 0, max = 90) double tilt) {
        SunAngles sun = SunAngles.of(latitude, declination, hourAngle);
        TiltedLight light = HdkrSky.on(new Facing(tilt, 90), sun, new SkyLight(300, 100, 1367), 0.2);
        assertTrue(light.beamWPerM2() >= 0 && light.skyWPerM2() >= 0 && light.groundWPerM2() >= 0);
    }

    @Test
    void theSunBehindTheWindowLeavesOnlyTheSky() {
        TiltedLight light = HdkrSky.on(new Facing(90, 0), SunAngles.of(46, 0, 0), new SkyLight(600, 100, 1367), 0.2);
        assertEquals(0, light.beamWPerM2());
        assertTrue(light.skyWPerM2() > 0);
    }

    @Test
    void theSunBelowTheHorizonLeavesNothing() {
        SunAngles night = SunAngles.of(46, 0, 120);
        assertSame(TiltedLight.DARK, HdkrSky.on(new Facing(30, 180), night, new SkyLight(10, 10, 1367), 0.2));
    }

    /** Mirrored about the equator: north for south, June for December, morning stays morning. */
    @Property
    void theSouthernHalfIsTheMirrorOfTheNorthern(
            @ForAll @DoubleRange(min = 0, max = 89) double latitude,
            @ForAll @DoubleRange(min = -23, max = 23) double declination,
            @ForAll @DoubleRange(min = -179, max = 179) double hourAngle,
            @ForAll @DoubleRange(min = 0, max = 90) double tilt) {
        SunAngles north = SunAngles.of(latitude, declination, hourAngle);
        SunAngles south = SunAngles.of(-latitude, -declination, hourAngle);
        assertEquals(north.zenithDeg(), south.zenithDeg(), 1e-9);
        assertEquals(new Facing(tilt, 150).cosIncidence(north), new Facing(tilt, 30).cosIncidence(south), 1e-9);
    }

    @Property
    void incidenceOfAWindowTurnedToTheSunIsNone(
            @ForAll @DoubleRange(min = 1, max = 89) double zenith,
            @ForAll @DoubleRange(min = 0, max = 360) double azimuth) {
        SunAngles sun = new SunAngles(zenith, azimuth, 0, 0);
        assertEquals(1, new Facing(zenith, azimuth).cosIncidence(sun), 1e-12);
    }
}
