package loftcoil.engine.pipe;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Mass and filling of copper tube of EN 1057 as a tube maker prints them (data sheet of straight tubes to EN 1057, as published on the web: nominal
 * copper weight in kg/m, filling volume in L/m), to their last digit.
 */
class TubeMassReferenceTest {

    @ParameterizedTest
    @CsvSource({
        "EN1057 10x1.0, 0.252, 0.050",
        "EN1057 12x1.0, 0.308, 0.079",
        "EN1057 15x1.0, 0.391, 0.133",
        "EN1057 18x1.0, 0.475, 0.201",
        "EN1057 22x1.0, 0.587, 0.314",
        "EN1057 28x1.5, 1.111, 0.491",
        "EN1057 35x1.5, 1.405, 0.804",
        "EN1057 42x1.5, 1.699, 1.195",
        "EN1057 54x2.0, 2.908, 1.963"
    })
    void massAndFillingOfAMetre(String name, double kgPerM, double litresPerM) {
        Tube tube = TubeTable.find(name).orElseThrow();
        assertEquals(kgPerM, tube.metalKgPerM(), 0.001);
        assertEquals(litresPerM, 1000 * tube.volumeM3PerM(), 0.0006);
    }

    /** Sizes that the maker's sheet lacks, from a trade table of weights of tubes to EN 1057, printed to 0.01 kg/m. */
    @ParameterizedTest
    @CsvSource({"EN1057 14x1.0, 0.36", "EN1057 16x1.0, 0.42", "EN1057 15x1.0, 0.39"})
    void massOfAMetreAsATradeTableRoundsIt(String name, double kgPerM) {
        assertEquals(kgPerM, TubeTable.find(name).orElseThrow().metalKgPerM(), 0.005);
    }
}
