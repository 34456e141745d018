package loftcoil.engine.design;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HeaterFieldsTest {

    private static final Design BOTHY = Changes.apply(Example.orchardBothy(), "coil.heat", "worked out from the fire");

    /** What is left out is what the page of the fire states. */
    @Test
    void theStatedDefaultsChangeNothing() {
        Design said = BOTHY;
        for (String[] field : new String[][] {
            {"fire.excessAir", "2.2"}, {"fire.fireboxM2", "0.8"}, {"fire.passageCm2", "200"}, {"coil.sootMm", "0.5"}
        }) {
            said = Changes.apply(said, field[0], field[1]);
        }
        assertEquals(heatW(BOTHY), heatW(said), 1e-9 * heatW(BOTHY));
    }

    @ParameterizedTest
    @CsvSource({
        "fire.excessAir, 1.6, 3.2",
        "fire.fireboxM2, 0.5, 2",
        "fire.passageCm2, 100, 400",
        "coil.sootMm, 0.2, 1.5"
    })
    void moreOfEachLeavesTheCoilLess(String field, String less, String more) {
        assertTrue(heatW(Changes.apply(BOTHY, field, less)) > heatW(BOTHY), field);
        assertTrue(heatW(Changes.apply(BOTHY, field, more)) < heatW(BOTHY), field);
    }

    /** The wettest wood with the most air still burns, so that no design is refused halfway. */
    @Test
    void theWorstFireThatCanBeSaidStillBurns() {
        Design worst = Changes.apply(Changes.apply(BOTHY, "fire.moisturePct", "60"), "fire.excessAir", "4");
        assertTrue(heatW(worst) > 0);
    }

    private static double heatW(Design design) {
        return design.coilHeating().heatW(0.03, 40);
    }
}
