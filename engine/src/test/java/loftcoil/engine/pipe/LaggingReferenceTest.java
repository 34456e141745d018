package loftcoil.engine.pipe;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Lagging against printed conductivities and service limits. */
class LaggingReferenceTest {

    /**
     * Conductivity in W/(m K) at a mean temperature in °C: annex of BS 5422:1990 as reprinted in UK Fuel Efficiency Booklet
     * 8 (the copy read had lost its columns: which row is glass wool, stone wool and rubber was inferred). Elastomeric foam
     * at 0 °C and polyethylene foam: typical declarations to EN 14304 and EN 14313, from memory.
     */
    @ParameterizedTest
    @CsvSource({
        "glass wool, 50, 0.035", "glass wool, 100, 0.044", "stone wool, 50, 0.037", "stone wool, 100, 0.043",
        "calcium silicate, 50, 0.055", "calcium silicate, 100, 0.058", "PIR foam, 50, 0.023", "PIR foam, 100, 0.026",
        "elastomeric foam, 50, 0.039", "elastomeric foam, 0, 0.035", "polyethylene foam, 40, 0.039"
    })
    void conductivity(String name, double meanC, double conductivity) {
        LaggingMaterial material = LaggingTable.require("material", name);
        assertEquals(conductivity, material.conductivityWPerMK(meanC), 1e-12);
    }

    /**
     * BS 5422:1990 annex prints a third value for two of them at 300 °C: stone wool 0.088, calcium silicate 0.083. Between its
     * points of 100 and 300 °C the annex says 0.0543 and 0.0643 at 150 °C; the line of this table, made for pipes of hot water, reads
     * low there by no more than the tenth its documentation states.
     */
    @ParameterizedTest
    @CsvSource({"stone wool, 0.043, 0.088", "calcium silicate, 0.058, 0.083"})
    void aboveItsPointsTheLineReadsLowByATenth(String name, double at100, double at300) {
        double printed = at100 + (at300 - at100) / 4;
        double line = LaggingTable.require("material", name).conductivityWPerMK(150);
        assertTrue(line < printed && line > 0.9 * printed, name + " " + line + " against " + printed);
    }

    /**
     * Highest service temperature, same annex: rubber foam 116, polyethylene foam 80, calcium silicate 800 °C. The others are
     * common practice, no source, or from memory.
     */
    @ParameterizedTest
    @CsvSource({
        "elastomeric foam, 116",
        "polyethylene foam, 80",
        "calcium silicate, 800",
        "stone wool, 600",
        "glass wool, 230",
        "PIR foam, 120"
    })
    void serviceLimit(String name, double limitC) {
        assertEquals(limitC, LaggingTable.require("material", name).serviceLimitC(), 0);
    }

    @Test
    void everyMaterialIsTestedAndSourced() {
        assertEquals(6, LaggingTable.names().size());
        for (String name : LaggingTable.names()) {
            assertTrue(LaggingTable.find(name).orElseThrow().source().length() > 10, name);
        }
    }
}
