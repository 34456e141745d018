package loftcoil.engine.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import loftcoil.engine.design.Changes;
import loftcoil.engine.design.DesignFields;
import loftcoil.engine.design.Example;
import loftcoil.engine.fault.Fault;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FaultWordsTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "tank.baseM | The tank, Tank base above the floor",
                "hotLegs[1].lengthM | The hot pipe, from coil to tank, line 2, Length of the leg",
                "coldLegs[0].slopeMmPerM | The cold pipe, from tank to coil, line 1, How much higher its far end is",
                "taps[2].levelM | The taps, line 3, Outlet above the floor",
                "warmest | Mean of the warmest month",
                "people | How many people live there",
                "no.such | no.such"
            })
    void aPlaceIsToldInWords(String path, String words) {
        assertEquals(words, FaultWords.place(path));
    }

    @Test
    void theRestOfAFaultStaysAsItIs() {
        assertEquals(
                "The tank, Tank base above the floor: 99; allowed: -20 to 20 m (too high)",
                FaultWords.line(new Fault("tank.baseM", "99", "-20 to 20 m", "too high")));
    }

    /** Nobody is shown where a value stands in a file. */
    @Test
    void everyFieldAndEveryChangeHasAName() {
        for (List<String> paths : List.of(
                DesignFields.of(Example.orchardBothy()).stream()
                        .map(DesignFields.Value::path)
                        .toList(),
                Changes.names())) {
            assertFalse(paths.isEmpty());
            paths.forEach(path ->
                    assertFalse(FaultWords.place(path.replace("[]", "[0]")).equals(path.replace("[]", "[0]")), path));
        }
    }
}
