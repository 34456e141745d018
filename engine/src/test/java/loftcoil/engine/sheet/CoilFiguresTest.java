package loftcoil.engine.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import loftcoil.engine.design.Changes;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.Example;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CoilFiguresTest {

    private static final Design BOTHY = Example.orchardBothy();

    /** The line through two tanks against the tank itself: there the hottest copper is at the boiling point. */
    @ParameterizedTest
    @ValueSource(doubles = {1.5, 2, 3})
    void atTheSingingTankTheHottestCopperBoilsWater(double heatKW) {
        Design design = BOTHY.withCoilHeatKW(heatKW);
        double singsC = coil(design, 40).singsFromTankC();
        assertTrue(singsC > 30 && singsC < 95, singsC + " °C");
        CoilFigures there = coil(design, singsC);
        assertEquals(there.boilingC(), there.wallHottestC(), 1);
        assertEquals(singsC, coil(design, 70).singsFromTankC(), 1);
    }

    @Test
    void itSingsBeforeTheLoopBoils() {
        CoilFigures coil = coil(BOTHY, 40);
        assertTrue(coil.wallC() < coil.wallHottestC());
        LoopFigures loop = Sheet.of(BOTHY, coil.singsFromTankC()).loop();
        assertTrue(loop.boilMarginK() > 5, loop.words());
    }

    /** Of the million watts a square metre that water takes, a fire gives tens of thousands. */
    @Test
    void burnoutIsNoRiskWithWaterInTheCoil() {
        for (double heatKW : new double[] {1, 2, 4}) {
            assertTrue(coil(BOTHY.withCoilHeatKW(heatKW), 40).burnoutNoRisk());
        }
        Design torch = Changes.apply(
                        Changes.apply(Changes.apply(BOTHY, "fire.burnKgPerH", "8"), "coil.lengthM", "0.4"),
                        "loop.tube",
                        "EN1057 28x1.5")
                .withCoilHeatKW(12);
        assertFalse(new CoilFigures(0, 0, 0, 0, 0, 0, 0.6).burnoutNoRisk());
        assertTrue(coil(torch, 40).burnoutShare() > coil(BOTHY, 40).burnoutShare());
    }

    /** An estimate apart from this program: dew point 42 °C, copper 41 °C with water of 10 °C: the first hour it sweats. */
    @Test
    void aColdCoilSweats() {
        Sheet cold = Sheet.of(Changes.apply(BOTHY, "coil.heat", "worked out from the fire"), 10);
        assertEquals(42, cold.flue().orElseThrow().dewC(), 1);
        CoilFigures coil = cold.coil().orElseThrow();
        assertTrue(coil.wallColdestC() < coil.wallC() && coil.wallColdestC() < 42, coil.toString());
        assertTrue(coil.dryFromTankC() > 10 && coil.dryFromTankC() < 42, coil.toString());
    }

    @Test
    void withoutHeatOrFlowThereIsNothingToSay() {
        assertEquals(Optional.empty(), Sheet.of(BOTHY.withCoilHeatKW(0)).coil());
        assertEquals(Optional.empty(), Sheet.of(BOTHY.withTankBaseM(-1.5)).coil());
    }

    private static CoilFigures coil(Design design, double tankC) {
        return Sheet.of(design, tankC).coil().orElseThrow();
    }
}
