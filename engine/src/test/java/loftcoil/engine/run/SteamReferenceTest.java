package loftcoil.engine.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import loftcoil.engine.design.Design;
import loftcoil.engine.design.Example;
import org.junit.jupiter.api.Test;

/** Water lost as steam, against balances made apart from the march. */
class SteamReferenceTest {

    /** h'' - h' at 100 °C: 2675.57 - 419.10 kJ/kg, IAPWS-IF97 (tables of saturation). */
    private static final double EVAPORATION_KJ_PER_KG = 2675.57 - 419.10;

    /** A coil above its tank carries nothing off: 2 kW for 4 h on each of the 212 days of its months leave as steam. */
    @Test
    void whatACoilThatCannotFlowTakesLeavesAsSteam() {
        Design low = Example.orchardBothy().withTankBaseM(-1.5);
        MonthRow year = YearRun.of(low).whole();
        double days = 31 + 28 + 31 + 30 + 31 + 30 + 31;
        assertEquals(days * 4, year.boilingMin() / 60, 0.5);
        assertEquals(2.0 * 4 * 3600 * days / EVAPORATION_KJ_PER_KG, year.steamL(), 0.002 * year.steamL());
    }

    /** What does not leave by taps, coat, panes and legs, nor is stored, has left as steam. */
    @Test
    void inATankThatBoilsSteamIsWhatNothingElseTook() {
        MonthRow year = YearRun.of(Example.orchardBothy()).whole();
        Losses losses = year.energy().losses();
        double left = year.energy().solarKWh()
                + year.energy().coilKWh()
                - year.energy().usedKWh()
                - year.energy().storedKWh()
                - losses.tank()
                - losses.window()
                - losses.legsLit()
                - losses.legsOut();
        assertEquals(left * 3600 / EVAPORATION_KJ_PER_KG, year.steamL(), 0.002 * year.steamL());
        assertTrue(year.steamL() > 100, "a year that boils for hundreds of hours: " + year);
    }
}
