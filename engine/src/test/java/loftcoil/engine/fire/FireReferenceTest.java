package loftcoil.engine.fire;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Flame, flue and season against published figures. */
class FireReferenceTest {

    private static final Wood HARDWOOD = WoodTable.require("wood", "hardwood");

    /**
     * Flame temperatures of wood without losses as handbooks draw them (from memory, read off curves): dry wood in the least air about
     * 2000 °C, twice the air about 1250; half water 1400 to 1500 in the least air, about 950 in twice. To 100 K.
     */
    @ParameterizedTest
    @CsvSource({"0,1.1,1900", "0,2,1250", "20,1.5,1450", "20,2,1170", "50,1.1,1400", "50,2,980"})
    void flameFromMemory(double moisturePct, double excessAir, double flameC) {
        Burn burn = new Burn(HARDWOOD, moisturePct, 1, excessAir, 0);
        assertEquals(flameC, burn.adiabaticC(), 100);
    }

    /** Dew point of the flue gas of wood chips with half water and 1.5 times the air: 60 to 65 °C (from memory). */
    @Test
    void dewPointOfWetWoodFromMemory() {
        assertEquals(62.5, HARDWOOD.flueGas(50, 1.5).dewPointC(101_325), 2.5);
    }

    /** Dry firewood in a heater: 40 to 50 °C, far below the 121 °C that keep tar away. Common practice, no source. */
    @Test
    void dewPointOfDryWood() {
        double dewC = Burn.common(HARDWOOD, 18, 1.4).flueGas().dewPointC(101_325);
        assertTrue(dewC > 40 && dewC < 50, "dew point " + dewC);
        assertTrue(dewC < FlueTop.LEAST_C);
    }

    /** Creosote guard: 250 °F (leaflet of the Alaska Department of Environmental Conservation). */
    @Test
    void creosoteGuard() {
        assertEquals((250 - 32) / 1.8, FlueTop.LEAST_C, 0.2);
        assertTrue(new FlueTop(120, 5, 45).tars());
        assertTrue(!new FlueTop(122, 5, 45).tars());
        assertTrue(new FlueTop(44, 5, 45).condenses());
    }

    /**
     * Textbook draught of a chimney, 3463 H (1/T outside − 1/T gas) in Pa at sea level, for gas as heavy as air (ASHRAE Handbook,
     * HVAC Systems and Equipment, chimneys, from memory). With six times the air wood gas is within 1 % of that.
     */
    @ParameterizedTest
    @CsvSource({"5,200,0", "8,250,-10", "4,150,15"})
    void draughtFromMemory(double heightM, double gasC, double outsideC) {
        double expected = 3463 * heightM * (1 / (outsideC + 273.15) - 1 / (gasC + 273.15));
        Burn burn = new Burn(HARDWOOD, 10, 1, 6, 0);
        double draught =
                new Chimney(heightM, 0.15, 0, outsideC).top(burn, gasC, 101_325).draughtPa();
        assertEquals(expected, draught, 0.02 * expected);
    }

    /**
     * A wood heater without a coil and without better knowledge: 63 % of the gross heat, the US EPA's default efficiency for heaters
     * without a catalyst, at the 20 % of water of its test wood; 3 points.
     */
    @Test
    void commonHeater() {
        Burn burn = Burn.common(HARDWOOD, 20, 2);
        FireBalance bare = TestFires.with(burn, 0).balance(TestFires.WATER);
        double usefulOfGross = bare.efficiency() * HARDWOOD.netJPerKg(20) / HARDWOOD.grossJPerKg(20);
        assertEquals(0.63, usefulOfGross, 0.03);
    }
}
