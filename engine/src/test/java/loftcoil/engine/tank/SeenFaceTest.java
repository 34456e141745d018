package loftcoil.engine.tank;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import loftcoil.engine.fault.RefusedException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What panes look at: plane geometry, and a count of beams. */
class SeenFaceTest {

    private static final int BEAMS = 400;

    /** 120 litres, 0.70 m high: 0.467 m across, 0.327 m² from the side. */
    private static final UprightCylinder UPRIGHT = new UprightCylinder(0.12, 0.70);

    @Test
    void uprightPanesSeeDiameterByHeightAndHalfTheWall() {
        SeenFace face = UPRIGHT.seenFrom(90);
        assertEquals(0.327, face.outlineM2(), 5e-4);
        assertEquals(UPRIGHT.sideM2() / 2, face.surfaceM2(), 1e-12);
        assertEquals(UPRIGHT.lidM2(), UPRIGHT.seenFrom(0).outlineM2(), 1e-12);
    }

    /** 0.5 m across and 180 litres: 0.917 m long, from every tilt 0.458 m². */
    @ParameterizedTest
    @ValueSource(doubles = {0, 35, 60, 90})
    void aLyingTankShowsDiameterByLengthFromEveryTilt(double tiltDeg) {
        SeenFace face = new LyingCylinder(0.18, 0.5).seenFrom(tiltDeg);
        assertEquals(0.5 * 0.18 / (Math.PI / 4 * 0.25), face.outlineM2(), 1e-12);
        assertEquals(Math.PI / 2 * face.outlineM2(), face.surfaceM2(), 1e-12);
    }

    @Test
    void aBoxShowsItsFrontAndItsLid() {
        SeenFace face = new Box(0.8, 0.3, 0.5).seenFrom(30);
        assertEquals(0.8 * 0.5 * 0.5 + 0.8 * 0.3 * Math.sqrt(3) / 2, face.outlineM2(), 1e-12);
        assertEquals(0.8 * 0.5 + 0.8 * 0.3, face.surfaceM2(), 1e-12);
    }

    /** The outline against beams counted one by one: a grid of them square on to the panes, each asked whether it meets the tank. */
    @ParameterizedTest
    @CsvSource({"15", "35", "60", "74"})
    void theOutlineOfAnUprightTankIsThatOfBeamsThatMeetIt(double tiltDeg) {
        double radius = UPRIGHT.diameterM() / 2;
        double high = UPRIGHT.heightM();
        double tilt = Math.toRadians(tiltDeg);
        double halfM = radius + high;
        int met = 0;
        for (int i = 0; i < BEAMS; i++) {
            for (int j = 0; j < BEAMS; j++) {
                double across = (2 * (i + 0.5) / BEAMS - 1) * halfM;
                double up = (2 * (j + 0.5) / BEAMS - 1) * halfM;
                met += meets(across, up, new double[] {Math.sin(tilt), Math.cos(tilt)}, radius) ? 1 : 0;
            }
        }
        double countedM2 = met * Math.pow(2 * halfM / BEAMS, 2);
        assertEquals(countedM2, UPRIGHT.seenFrom(tiltDeg).outlineM2(), 0.01 * countedM2);
    }

    /** Steps along a beam that comes down at (sin, cos) of the tilt, from beyond the tank. */
    private static boolean meets(double across, double up, double[] way, double radius) {
        if (Math.abs(across) > radius) {
            return false;
        }
        double halfChord = Math.sqrt(radius * radius - across * across);
        for (double along = -1.5; along < 1.5; along += 0.002) {
            double y = up * way[1] + along * way[0];
            double z = UPRIGHT.heightM() / 2 - up * way[0] + along * way[1];
            if (Math.abs(y) <= halfChord && z >= 0 && z <= UPRIGHT.heightM()) {
                return true;
            }
        }
        return false;
    }

    @Test
    void panesBeyondTheOutlineCountByTheirReflectorsOnly() {
        SeenFace face = UPRIGHT.seenFrom(35);
        assertEquals(0.2, face.creditedM2(0.2, 0), 1e-12);
        assertEquals(face.outlineM2(), face.creditedM2(6, 0), 1e-12);
        assertEquals(face.outlineM2() + 0.7 * (0.8 - face.outlineM2()), face.creditedM2(0.8, 0.7), 1e-12);
    }

    /** Winston's limit of a fixed trough that takes in 30° to each side: 1 / sin 30° panes to each bare surface, and no more. */
    @Test
    void reflectorsBringNoMoreThanAFixedTroughCan() {
        SeenFace face = UPRIGHT.seenFrom(35);
        double mostM2 = face.surfaceM2() / Math.sin(Math.toRadians(30));
        double most = face.outlineM2() + 0.95 * (mostM2 - face.outlineM2());
        assertEquals(most, face.creditedM2(mostM2, 0.95), 1e-12);
        assertEquals(most, face.creditedM2(20, 0.95), 1e-12);
        assertTrue(most < 1.4, "of 20 m² " + most);
    }

    @Test
    void panesLoseByTheirOwnAreaUntilTheyAreLargerThanWhatTheyLookAt() {
        SeenFace face = UPRIGHT.seenFrom(35);
        assertEquals(0.3, face.losingM2(0.3), 1e-12);
        assertEquals(face.surfaceM2(), face.losingM2(6), 1e-12);
    }

    @Test
    void refusesWhatCannotBe() {
        SeenFace face = UPRIGHT.seenFrom(35);
        assertThrows(RefusedException.class, () -> UPRIGHT.seenFrom(91));
        assertThrows(RefusedException.class, () -> new LyingCylinder(0.1, 0.4).seenFrom(Double.NaN));
        assertThrows(RefusedException.class, () -> face.creditedM2(Double.NaN, 0));
        assertThrows(RefusedException.class, () -> face.creditedM2(1, 1));
        assertThrows(RefusedException.class, () -> face.losingM2(-1));
        assertThrows(RefusedException.class, () -> new SeenFace(0, -1, 0));
    }
}
