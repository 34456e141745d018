package loftcoil.engine.pipe;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Tubes against printed tables of their standards. */
class TubeReferenceTest {

    private static final double INCH_M = 0.0254;

    /** EN 1057 table 1 as makers print it: outer diameter and wall in mm; half-hard, heavy and continental ranges. */
    @ParameterizedTest
    @CsvSource({
        "15x0.7, 15, 0.7",
        "22x0.9, 22, 0.9",
        "28x0.9, 28, 0.9",
        "35x1.2, 35, 1.2",
        "15x1.0, 15, 1.0",
        "22x1.2, 22, 1.2",
        "28x1.2, 28, 1.2",
        "35x1.5, 35, 1.5",
        "18x1.0, 18, 1.0",
        "22x1.0, 22, 1.0",
        "28x1.5, 28, 1.5"
    })
    void en1057(String size, double outerMm, double wallMm) {
        Tube tube = TubeTable.require("tube", "EN1057 " + size);
        assertEquals(outerMm, 1000 * tube.outerM(), 1e-9);
        assertEquals(wallMm, 1000 * tube.wallM(), 1e-9);
    }

    /** EN 1057:2010 table 3 as an open library of building models lists it: the sizes that makers' tables lack. */
    @ParameterizedTest
    @CsvSource({"6x0.6, 4.8", "6x0.8, 4.4", "15x0.8, 13.4", "18x0.8, 16.4", "22x1.1, 19.8", "40x1.0, 38", "54x1.5, 51"})
    void en1057Table3(String size, double boreMm) {
        assertEquals(boreMm, 1000 * TubeTable.require("tube", "EN1057 " + size).boreM(), 1e-9);
    }

    /** Water held, from a maker's table of EN 1057 tube: litres for each metre, printed to three digits after the point. */
    @ParameterizedTest
    @CsvSource({"15x1.0, 13, 0.133", "18x1.0, 16, 0.201", "22x1.0, 20, 0.314", "28x1.5, 25, 0.491", "35x1.5, 32, 0.804"
    })
    void en1057Contents(String size, double boreMm, double litrePerM) {
        Tube tube = TubeTable.require("tube", "EN1057 " + size);
        assertEquals(boreMm, 1000 * tube.boreM(), 1e-9);
        assertEquals(litrePerM, 1000 * tube.volumeM3PerM(), 5e-4);
    }

    /** ASTM B88 tables of types K, L and M: outer diameter and wall in inches, as three public tables print them. */
    @ParameterizedTest
    @CsvSource({
        "K 1/2, 0.625, 0.049", "K 3/4, 0.875, 0.065", "K 1, 1.125, 0.065", "K 1-1/4, 1.375, 0.065",
        "L 1/2, 0.625, 0.040", "L 3/4, 0.875, 0.045", "L 1, 1.125, 0.050", "L 1-1/4, 1.375, 0.055",
        "M 1/2, 0.625, 0.028", "M 3/4, 0.875, 0.032", "M 1, 1.125, 0.035", "M 1-1/4, 1.375, 0.042"
    })
    void astmB88(String size, double outerInch, double wallInch) {
        Tube tube = TubeTable.require("tube", "B88 " + size);
        assertEquals(outerInch, tube.outerM() / INCH_M, 1e-9);
        assertEquals(wallInch, tube.wallM() / INCH_M, 1e-9);
    }

    /** Bore of ASTM B88 type L in mm, from a printed table: 13.84, 19.94, 26.04, 32.13. */
    @ParameterizedTest
    @CsvSource({"L 1/2, 13.84", "L 3/4, 19.94", "L 1, 26.04", "L 1-1/4, 32.13"})
    void astmB88Bore(String size, double boreMm) {
        assertEquals(boreMm, 1000 * TubeTable.require("tube", "B88 " + size).boreM(), 0.006);
    }

    /**
     * AS 1432, types A and B, in mm: from memory, not compared with a printed table. (A fitting maker's sheets give a socket of 12.72
     * to 12.82 mm for the tube of 15 mm nominal size, which is its outer diameter with room for solder.)
     */
    @ParameterizedTest
    @CsvSource({
        "B DN15, 12.70, 0.91", "B DN20, 19.05, 1.02", "B DN25, 25.40, 1.22",
        "A DN15, 12.70, 1.02", "A DN20, 19.05, 1.42", "A DN25, 25.40, 1.63"
    })
    void as1432(String size, double outerMm, double wallMm) {
        Tube tube = TubeTable.require("tube", "AS1432 " + size);
        assertEquals(outerMm, 1000 * tube.outerM(), 1e-9);
        assertEquals(wallMm, 1000 * tube.wallM(), 1e-9);
    }

    @Test
    void everyNameIsFoundOnce() {
        assertEquals(110, TubeTable.names().size());
        assertEquals(110, new HashSet<>(TubeTable.names()).size());
        for (String name : TubeTable.names()) {
            assertEquals(name, TubeTable.find(name).orElseThrow().name());
        }
    }

    /** Whoever gives a size alone gets copper; a word behind it is a metal, and plastic is none. */
    @Test
    void aSizeMayNameItsMetal() {
        Tube alone = TubeTable.require("tube", "35x1.0");
        assertEquals(TubeMetal.COPPER, alone.metal());
        assertEquals(TubeTable.require("tube", "35x1.0 copper").boreM(), alone.boreM());
        assertTrue(TubeTable.assumesCopper("35x1.0"));
        assertFalse(TubeTable.assumesCopper("35x1.0 copper"));
        assertFalse(TubeTable.assumesCopper("EN1057 35x1.0"));
        assertEquals(
                TubeMetal.STAINLESS,
                TubeTable.require("tube", "22x1.5 stainless").metal());
        assertEquals(
                TubeMetal.STEEL, TubeTable.require("tube", "21.3x2.6 steel").metal());
        assertEquals(
                "coil.tube: \"22x2 PEX\"; allowed: a size and one of copper, stainless, steel (plastic melts beside a fire)",
                TubeTable.unknown("coil.tube", "22x2 PEX").line());
        assertTrue(TubeTable.unknown("taps", "1/2 inch PEX").line().contains("plastic softens in the hottest water"));
        assertEquals(
                "coil.tube: \"22x11\"; allowed: outer diameter x wall in mm with a bore left, as 35x1.0",
                TubeTable.unknown("coil.tube", "22x11").line());
    }

    /** A tube of no table, by its outer diameter and wall in mm: bore and area by geometry. */
    @Test
    void anyOuterDiameterAndWall() {
        Tube tube = TubeTable.require("tube", "35x1.1 copper");
        assertEquals(0.0328, tube.boreM(), 1e-12);
        assertEquals(Math.PI / 4 * 0.0328 * 0.0328, tube.areaM2(), 1e-12);
        assertEquals("35x1.1 copper", tube.name());
        for (String bad :
                new String[] {"35x18 copper", "35x0 copper", "900x2 copper", "35x copper", "35x1.1 PEX", "-35x1 copper"
                }) {
            assertTrue(TubeTable.find(bad).isEmpty(), bad);
        }
    }
}
