package loftcoil.engine.use;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import com.hummeling.if97.IF97;
import loftcoil.engine.fault.RefusedException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MixingReferenceTest {

    /** Balance of heat with one heat capacity, exact: 40 °C from 60 and 10 takes 0.600 of hot. */
    @Test
    void fortyFromSixtyAndTenTakesThreeFifths() {
        assertEquals(0.600, Mixing.hotShare(60, 10, 40), 0.002);
    }

    /**
     * Enthalpies of IAPWS R7-97(2012), region 1, by an independent library. Its enthalpy differences and ours agree within 5e-4
     * (both formulations state 0.1 % or more for heat capacity), so a ratio s of two of them within 1e-3 s (1 − s), at most 2.5e-4.
     */
    @ParameterizedTest
    @CsvSource({"60, 10, 40", "90, 5, 38", "45, 12, 40", "80, 20, 41"})
    void exactShareFollowsTheEnthalpiesOfTheSteamTables(double hotC, double coldC, double wantedC) {
        IF97 if97 = new IF97(IF97.UnitSystem.SI);
        double hot = if97.specificEnthalpyPT(1e5, hotC + 273.15);
        double cold = if97.specificEnthalpyPT(1e5, coldC + 273.15);
        double wanted = if97.specificEnthalpyPT(1e5, wantedC + 273.15);
        assertEquals((wanted - cold) / (hot - cold), Mixing.hotShare(hotC, coldC, wantedC), 2.5e-4);
    }

    @Test
    void sharesStopAtNoneAndAll() {
        assertEquals(0, Mixing.hotShare(60, 15, 12));
        assertEquals(1, Mixing.hotShare(35, 10, 40));
        assertEquals(1, Mixing.hotShare(10, 10, 40));
        assertEquals(0, Mixing.hotShare(5, 10, 8));
    }

    @Test
    void refusesTemperaturesThatCannotBe() {
        assertThrows(RefusedException.class, () -> Mixing.hotShare(Double.NaN, 10, 40));
        assertThrows(RefusedException.class, () -> Mixing.hotShare(60, -1, 40));
    }
}
