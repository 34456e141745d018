package loftcoil.runner.handout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import loftcoil.engine.build.PartsList;
import loftcoil.engine.design.Example;
import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.words.Units;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The shopping list as written and as it comes back. */
class ShoppingListTest {

    private static final PartsList PARTS = PartsList.of(Example.orchardBothy());
    private static final String HEAD = "group,amount,part,what for,price of the line\r\n";

    private static ShoppingList one(String price) {
        return ShoppingList.filledIn(HEAD + "Tank,1,tank,\"holds, water\",\"" + price + "\"\r\n");
    }

    @Test
    void aListAsWrittenHasNoPriceYet() {
        ShoppingList list = ShoppingList.filledIn(ShoppingList.csv(PARTS, Units.METRIC));

        assertEquals(BigDecimal.ZERO, list.sum());
        assertEquals(PARTS.parts().size(), list.open().size());
    }

    @Test
    void linesEndAsTheStandardWantsAndNoMarkOfThePageIsLeft() {
        String csv = ShoppingList.csv(PARTS, Units.US);

        // RFC 4180, section 2, rule 1: each record ends with CRLF.
        assertEquals(PARTS.parts().size() + 1, csv.split("\r\n", -1).length - 1);
        assertFalse(csv.contains("&") || csv.contains("<"), csv);
        assertTrue(csv.contains(" in"), csv);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"12.50|12.50", "12,50|12.50", "€ 7|7", "1 250|1250", "1'250.00 Fr|1250.00", "GBP 3.5|3.5"})
    void pricesAsPeopleWriteThem(String written, String sum) {
        assertEquals(new BigDecimal(sum), one(written).sum());
    }

    @ParameterizedTest
    @ValueSource(strings = {"about 12-15", "1,250", "-3", "free", "12.505", "99999999999999"})
    void whatIsNoPriceIsRefusedWithItsLine(String written) {
        RefusedException refused = assertThrows(RefusedException.class, () -> one(written));

        assertEquals("line 2, price of the line", refused.faults().get(0).path());
        assertEquals(written, refused.faults().get(0).given());
    }

    @Test
    void semicolonsAndTabsPartColumnsToo() {
        String table = HEAD + "Tank,1,tank,water,4\r\nTaps,1,tap,water,\r\n";
        for (String separator : List.of(";", "\t")) {
            ShoppingList list = ShoppingList.filledIn(table.replace(",", separator));
            assertEquals(new BigDecimal("4"), list.sum());
            assertEquals(List.of("tap"), list.open());
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "a,b\r\n1,2\r\n", "\"unfinished"})
    void aTableOfSomethingElseIsRefused(String table) {
        assertThrows(RefusedException.class, () -> ShoppingList.filledIn(table));
    }
}
