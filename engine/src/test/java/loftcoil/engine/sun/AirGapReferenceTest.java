package loftcoil.engine.sun;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class AirGapReferenceTest {

    @Test
    void platesAt70And50TwentyFiveMillimetresApart() {
        // Duffie and Beckman, 4th ed., Example 3.11.1, 45 degrees (from memory, recomputed): Rayleigh number 1.82e4,
        // Nusselt
        // number 2.4, 2.78 W/(m² K). The book reads the air from a table; the two airs differ by up to 1.5 %.
        AirGap gap = new AirGap(0.025, 45, 101_325);
        assertEquals(1.82e4, gap.rayleigh(60, 20), 0.015 * 1.82e4);
        assertEquals(2.4, gap.nusseltWarmBelow(1.82e4), 0.05);
        assertEquals(2.78, gap.convectionWPerM2K(70, 50), 0.015 * 2.78);
    }
}
