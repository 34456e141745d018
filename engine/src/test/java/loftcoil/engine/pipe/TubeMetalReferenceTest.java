package loftcoil.engine.pipe;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class TubeMetalReferenceTest {

    /** Heat and mass transfer data book, metals at 20 to 27 °C: plain carbon steel 7854 kg/m³, 434 J/(kg K), 60.5 W/(m K). */
    @Test
    void steelAsInTheDataBook() {
        assertEquals(7854, TubeMetal.STEEL.kgPerM3());
        assertEquals(434, TubeMetal.STEEL.jPerKgK());
        assertEquals(60.5, TubeMetal.STEEL.conductivityWPerMK());
    }

    /**
     * Incropera, table A.1, AISI 316: 13.4 W/(m K) at 300 K and 15.2 at 400 K, 468 J/(kg K), 8238 kg/m³, which is 2.6 % over the
     * 8027 of the tube maker whose density stands here.
     */
    @Test
    void stainlessBetweenTheHandbooksTemperatures() {
        assertTrue(TubeMetal.STAINLESS.conductivityWPerMK() > 13.4 && TubeMetal.STAINLESS.conductivityWPerMK() < 15.2);
        assertEquals(468, TubeMetal.STAINLESS.jPerKgK());
        assertEquals(8238, TubeMetal.STAINLESS.kgPerM3(), 0.027 * 8238);
    }

    /** A tube maker's sheet to EN 1057: copper grows by 17e-6 for each kelvin; one of AISI 316: 16.5e-6 from 20 to 100 °C. */
    @Test
    void growthAsMakersPrintIt() {
        assertEquals(17e-6, TubeMetal.COPPER.growthPerK());
        assertEquals(16.5e-6, TubeMetal.STAINLESS.growthPerK());
    }

    /** Binder 1973, new pipe: drawn copper 1.5 µm, commercial steel 45 µm; a table of roughness: stainless 0.002 mm. */
    @Test
    void roughnessOfNewPipe() {
        assertEquals(1.5e-6, TubeMetal.COPPER.roughnessM());
        assertEquals(45e-6, TubeMetal.STEEL.roughnessM());
        assertEquals(2e-6, TubeMetal.STAINLESS.roughnessM());
    }

    /** EN 10255, medium, DN 15: 21.3 x 2.6 mm, 1.21 kg/m black and plain-ended (from memory). */
    @Test
    void massOfATubeOfSteel() {
        assertEquals(1.21, TubeTable.require("tube", "21.3x2.6 steel").metalKgPerM(), 0.02);
    }
}
