package loftcoil.engine.sun;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class SolarTimeReferenceTest {

    /** 89.4 degrees west on the clock of the 90th meridian. */
    private static final Place MADISON = new Place(43, -89.4, 263, -6);

    @Test
    void equationOfTimeOnTheThirdOfFebruary() {
        // Duffie and Beckman, 4th ed., Example 1.5.1: -13.5 min.
        assertEquals(-13.5, SolarTime.equationOfTimeMin(34), 0.05);
    }

    @Test
    void halfPastTenInMadison() {
        // Same example: 10:30 on the clock is 10:19 by the sun.
        double solarMin = 10 * 60 + 30 + SolarTime.solarMinusClockMin(MADISON, 34);
        assertEquals(10 * 60 + 19, solarMin, 0.5);
    }
}
