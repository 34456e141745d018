package loftcoil.engine.sun;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class AirDayReferenceTest {

    @Test
    void julyInland() {
        // FAO Irrigation and Drainage Paper 56 (1998), Example 15 (from memory, recomputed): a July mean range of 26.6
        // - 14.8
        // = 11.8 K and 40.6 MJ/m² outside the air give 22.3 MJ/m² on the ground. Here it is read the other way.
        assertEquals(11.8, AirDay.rangeK(22.3 / 40.6), 0.05);
    }
}
