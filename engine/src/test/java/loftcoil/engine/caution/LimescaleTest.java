package loftcoil.engine.caution;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import loftcoil.engine.design.Changes;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.Example;
import loftcoil.engine.design.Use;
import org.junit.jupiter.api.Test;

class LimescaleTest {

    private static final Design BOTHY = Example.orchardBothy();

    /**
     * By hand: 80 L a day of 60 °C and 300 mg/L carry 80 × 365 × 240 mg = 7.01 kg over what soft water has; a tenth on 1.6 m of 20.2
     * mm bore (0.1015 m²) of 2400 kg/m³ is 2.88 mm; three quarters of 0.513 L of bore are 0.923 kg, 1.32 years.
     */
    @Test
    void byHand() {
        Limescale lime = Limescale.of(hard(BOTHY.withUse(List.of(new Use(8, 80, 60, "wash tub"))), 300))
                .orElseThrow();
        assertEquals(0.701, lime.kgPerYear(), 0.001);
        assertEquals(2.88, lime.mmPerYear(), 0.01);
        assertEquals(1.32, lime.yearsToHalfBore(), 0.01);
    }

    @Test
    void softWaterLeavesNothingAndSilenceSaysNothing() {
        assertEquals(Optional.empty(), Limescale.of(BOTHY));
        Limescale soft = Limescale.of(hard(BOTHY, 60)).orElseThrow();
        assertEquals(0, soft.kgPerYear());
        assertTrue(Double.isInfinite(soft.yearsToHalfBore()));
    }

    /** Mixed water counts by its hot part: 40 °C from 60 and 10 °C is 0.6 hot (energy balance). */
    @Test
    void mixedWaterCountsByItsHotPart() {
        assertEquals(60, Limescale.hotLitresADay(BOTHY.withUse(List.of(new Use(8, 100, 40, "wash tub")))), 1e-9);
    }

    private static Design hard(Design design, double mgPerL) {
        return Changes.apply(design, "site.hardnessMgPerL", Double.toString(mgPerL));
    }
}
