package loftcoil.engine.sun;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import net.e175.klaus.solarpositioning.JulianDate;
import net.e175.klaus.solarpositioning.SPA;
import net.e175.klaus.solarpositioning.SolarPosition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SunAnglesReferenceTest {

    /** Accuracy the author of the algorithm states: Grena (2012), Solar Energy 86, 1323, no. 3. */
    private static final double STATED_DEG = 0.01;

    private static final ZonedDateTime EXAMPLE = ZonedDateTime.of(2003, 10, 17, 12, 30, 30, 0, ZoneOffset.ofHours(-7));

    @Test
    void theLibraryReproducesTheExampleOfItsReport() {
        // Reda and Andreas, NREL/TP-560-34302 (rev. 2008), Table A5.1.
        SolarPosition sun = SPA.calculateSolarPosition(EXAMPLE, 39.742476, -105.1786, 1830.14, 67, 820, 11);
        assertEquals(50.11162, sun.zenithAngle(), 1e-5);
        assertEquals(194.34024, sun.azimuth(), 1e-5);
        assertEquals(2452930.312847, new JulianDate(EXAMPLE, 67.0).julianDate(), 1e-6);
    }

    @ParameterizedTest
    @CsvSource({
        "46.2, 7.4, 1",
        "-46.2, 7.4, 1",
        "0, 100, 7",
        "69.6, 18.9, 1",
        "-77.8, 166.7, 12",
        "89.9, 0, 0",
        "51, -114, -7"
    })
    void theYearsAlgorithmAgreesWithTheFullOne(double latitudeDeg, double longitudeDeg, int offsetH) {
        Place place = new Place(latitudeDeg, longitudeDeg, 0, offsetH);
        for (int day = 0; day < 365; day += 5) {
            for (int hour = 0; hour < 24; hour += 3) {
                LocalDateTime clock = LocalDateTime.of(2026, 1, 1, hour, 17).plusDays(day);
                SunAngles ours = SunAngles.at(place, clock);
                SolarPosition full = SPA.calculateSolarPosition(
                        ZonedDateTime.of(clock, ZoneOffset.ofHours(offsetH)), latitudeDeg, longitudeDeg, 0, 69.2);
                assertTrue(apartDeg(ours, full) < STATED_DEG, clock + ": " + apartDeg(ours, full));
            }
        }
    }

    @ParameterizedTest
    @CsvSource({"44, -13.95", "162, 23.1", "105, 9.4", "288, -9.6", "344, -23.0"})
    void theYearsDeclinationIsNearTheTextbooks(int dayNumber, double declinationDeg) {
        // Duffie and Beckman, Table 1.6.1 (from memory) and Example 1.6.1; the formula is off by up to 1 degree.
        LocalDateTime noon = LocalDateTime.of(2026, 1, 1, 12, 0).plusDays(dayNumber - 1);
        SunAngles sun = SunAngles.at(new Place(46.2, 7.4, 620, 1), noon);
        assertEquals(declinationDeg, sun.declinationDeg(), 1.0);
    }

    @Test
    void hourAngleAgreesWithTheTextbooksSolarTime() {
        // Spencer's equation of time is good to half a minute: an eighth of a degree.
        Place place = new Place(46.2, 7.4, 620, 1);
        for (int dayNumber = 1; dayNumber <= 365; dayNumber += 13) {
            LocalDateTime clock = LocalDateTime.of(2026, 1, 1, 10, 0).plusDays(dayNumber - 1);
            double solarMin = 600 + SolarTime.solarMinusClockMin(place, dayNumber);
            assertEquals((solarMin - 720) / 4, SunAngles.at(place, clock).hourAngleDeg(), 0.25, clock.toString());
        }
    }

    /** Angle between two directions, which azimuths alone would overstate overhead. */
    private static double apartDeg(SunAngles one, SolarPosition other) {
        double a = Math.toRadians(one.zenithDeg());
        double b = Math.toRadians(other.zenithAngle());
        double turn = Math.toRadians(one.azimuthDeg() - other.azimuth());
        double half = Math.pow(Math.sin((a - b) / 2), 2) + Math.sin(a) * Math.sin(b) * Math.pow(Math.sin(turn / 2), 2);
        return Math.toDegrees(2 * Math.asin(Math.sqrt(half)));
    }
}
