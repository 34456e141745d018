package loftcoil.engine.design;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import loftcoil.engine.fault.RefusedException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What somebody who writes a design by hand is told of the usual slips. */
class FaultHintsTest {

    private static final String BOTHY = Example.orchardBothyJson();

    private static List<String> refused(String json) {
        return assertThrows(RefusedException.class, () -> DesignJson.read(json)).lines();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "\"azimuthDeg\": 180 | \"azimuthDeg\": -20 | clockwise from north all round: 340 for -20",
                "\"litFromH\": 17.0 | \"litFromH\": [7, 17] | the second of a day stands in litAgainFromH",
                "\"globalKWhPerM2Day\": [1.4 | \"globalKWhPerM2Day\": [21.6 | MJ, not kWh? 21.6 MJ are 6.00 kWh",
                "\"months\": [1 | \"months\": [\"May\" | months are counted, January as 1: 5",
                "\"altitudeM\": 620 | \"altitudeM\": 19,5 | a decimal point and no comma",
                "\"altitudeM\": 620 | \"altitudeM\": 620, \"heigth\": 3 | altitudeM, utcOffsetH"
            })
    void aUsualSlipIsToldWithWhatWasMeant(String as, String written, String told) {
        assertTrue(BOTHY.contains(as), BOTHY);

        List<String> lines = refused(BOTHY.replaceFirst(java.util.regex.Pattern.quote(as), written));

        assertEquals(1, lines.size(), lines.toString());
        assertTrue(lines.get(0).contains(told), lines.get(0));
    }

    @Test
    void whatNobodyMeansIsToldAsItIs() {
        String line = refused(BOTHY.replaceFirst("\"azimuthDeg\": 180", "\"azimuthDeg\": 400"))
                .get(0);
        assertTrue(line.endsWith("allowed: 0 to 360 degrees"), line);
    }
}
