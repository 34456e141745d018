package loftcoil.engine.caution;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import loftcoil.engine.design.Changes;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.SafeBothy;
import loftcoil.engine.loop.Circuit;
import org.junit.jupiter.api.Test;

/** The water sunk to the return port, and a coil that nobody has cleaned. */
class SunkAndFurredTest {

    private static final Design SAFE = SafeBothy.design();

    /** Water at 70 °C weighs 977.8 kg/m³ (IAPWS SR6-08); a boiling point rises 1 K for each 3.6 kPa (IF97, 100 to 101 °C). */
    @Test
    void sinkingToTheReturnPortTakesItsHeadOffTheBoilingPoint() {
        Circuit full = SAFE.circuit(70);
        double headM = SAFE.tank().waterlineM() - SAFE.tank().returnPortM();
        double fallsK = 977.8 * 9.81 * headM / 3600;
        double portM = SAFE.tank().returnPortLevelM();
        assertEquals(fallsK, full.boilingC(portM) - full.sunkToReturnPort().boilingC(portM), 0.05);
        double fullK = full.search().forward().orElseThrow().boilMargin().marginK();
        double sunkK = full.sunkToReturnPort()
                .search()
                .forward()
                .orElseThrow()
                .boilMargin()
                .marginK();
        assertEquals(fallsK, fullK - sunkK, 0.05);
    }

    @Test
    void onlyATankFilledByHandIsToldOfItsLevel() {
        assertEquals(List.of("LC-LEVEL"), codes(SafeBothy.with("/safety/coldFeed/kind", "\"by hand\"")));
        assertEquals(List.of(), codes(SafeBothy.with("/safety/coldFeed/kind", "\"float valve\"")));
    }

    /** 2 kW for 4 h over 2256.5 kJ/kg (IAPWS-IF97 at 100 °C) are 12.8 kg. */
    @Test
    void anEveningOfSteamIsItsHeatOverThatOfEvaporation() {
        String text = Cautions.of(CautionsTest.full(SafeBothy.with("/safety/coldFeed/kind", "\"by hand\"")))
                .cautions()
                .get(0)
                .text();
        assertTrue(text.contains("An evening of boiling takes 13 L"), text);
    }

    /** The years are the first: one year less and the loop still runs. */
    @Test
    void aFurredCoilIsToldByTheFirstYearThatStopsTheLoop() {
        Design hard = Changes.apply(SAFE, "site.hardnessMgPerL", "300");
        Limescale lime = Limescale.of(hard).orElseThrow();
        FurredCoil furred = FurredCoil.of(hard, lime).orElseThrow();
        double shutAfter = lime.yearsToHalfBore() / 0.75;
        assertTrue(furred.years() <= Math.ceil(shutAfter), furred + " of " + shutAfter);
        assertTrue(furred.years() > lime.yearsToHalfBore(), furred + " at half the bore the loop runs still");
        Design harder = Changes.apply(SAFE, "site.hardnessMgPerL", "600");
        assertTrue(FurredCoil.of(harder, Limescale.of(harder).orElseThrow())
                        .orElseThrow()
                        .years()
                < furred.years());
    }

    @Test
    void softWaterFursNothing() {
        for (String hardness : List.of("0", "60", "80")) {
            Design soft = Changes.apply(SAFE, "site.hardnessMgPerL", hardness);
            assertEquals(
                    Optional.empty(), FurredCoil.of(soft, Limescale.of(soft).orElseThrow()), hardness);
        }
    }

    private static List<String> codes(Design design) {
        return CautionsTest.codes(Cautions.of(CautionsTest.full(design)));
    }
}
