package loftcoil.engine.pipe;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TubeTradeTest {

    /** The words of the standards: EN 1057 and ASTM B88M by outer diameter, ASTM B88 and AS 1432 by nominal size and type. */
    @ParameterizedTest
    @CsvSource({
        "EN1057 22x0.9, 22 × 0.9 mm to EN 1057",
        "B88 L 3/4, 3/4 in type L to ASTM B88",
        "B88 K 1-1/4, 1-1/4 in type K to ASTM B88",
        "AS1432 B DN20, DN 20 type B to AS 1432",
        "B88M B 22, 22 mm type B to ASTM B88M",
        "22x1.5 stainless, 22x1.5 stainless"
    })
    void askedForInTheWordsOfItsStandard(String name, String asked) {
        assertEquals(asked, TubeTrade.asked(TubeTable.tube(name)));
    }

    @Test
    void everyNamedTubeIsAskedForByItsStandard() {
        assertTrue(TubeTable.names().size() > 60);
        for (String name : TubeTable.names()) {
            String asked = TubeTrade.asked(TubeTable.tube(name));
            assertTrue(asked.matches(".+ to (EN 1057|ASTM B88M?|AS 1432)"), asked);
        }
    }

    @Test
    void whatIsNearElsewhereIsOfAnotherStandardAndWithinAsMuchOfTheBore() {
        for (String name : TubeTable.names()) {
            Tube tube = TubeTable.tube(name);
            for (Tube other : TubeTrade.elsewhere(tube)) {
                assertFalse(other.name().split(" ", -1)[0].equals(name.split(" ", -1)[0]), name + " " + other);
                assertEquals(tube.boreM(), other.boreM(), 0.15 * tube.boreM(), name + " " + other);
            }
        }
    }

    /** ASTM B88 table 1: 3/4 in type L is 0.785 in wide inside, 19.9 mm; EN 1057 22 x 0.9 is 20.2 mm. */
    @Test
    void twentyTwoMillimetresAreThreeQuartersOfAnInch() {
        List<String> near = TubeTrade.elsewhere(TubeTable.tube("EN1057 22x0.9")).stream()
                .map(Tube::name)
                .toList();
        assertTrue(near.get(0).endsWith(" 3/4"), near.toString());
    }
}
