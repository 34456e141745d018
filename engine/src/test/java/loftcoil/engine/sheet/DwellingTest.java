package loftcoil.engine.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import loftcoil.engine.caution.Caution;
import loftcoil.engine.caution.Severity;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.Dwelling;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Nobody starts from a dwelling that would hurt somebody; the bothy of the course is one that the lessons make safe. */
class DwellingTest {

    @ParameterizedTest
    @EnumSource(mode = EnumSource.Mode.EXCLUDE, names = "ORCHARD_BOTHY")
    void anExampleIsWithoutDangerAndLeavesNothingUnsaid(Dwelling dwelling) {
        Sheet sheet = Sheet.whole(dwelling.design(), Sheet.USUAL_TANK_C);

        assertEquals(
                List.of(),
                sheet.verdict().of(Severity.DANGER).stream().map(Caution::code).toList());
        assertEquals(List.of(), sheet.asks());
        assertTrue(sheet.loop().circulates());
        assertTrue(sheet.year().orElseThrow().mid().extremes().hottestTankC() > 60, "warm enough to be of use");
    }

    @Test
    void allAreMarkedAsInventedAndDiffer() {
        assertTrue(Stream.of(Dwelling.values())
                .map(Dwelling::design)
                .allMatch(design -> String.valueOf(design.notes().get("")).contains("invented")));
        Set<String> names = Stream.of(Dwelling.values())
                .map(Dwelling::design)
                .map(Design::name)
                .collect(Collectors.toSet());
        assertEquals(Dwelling.values().length, names.size());
    }
}
