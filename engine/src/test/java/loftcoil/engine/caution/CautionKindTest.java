package loftcoil.engine.caution;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import loftcoil.engine.loop.Circulation;
import loftcoil.engine.words.BareNumbers;
import loftcoil.engine.words.ClassStrings;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class CautionKindTest {

    @Test
    void thePageOfModelsListsEveryCautionWithItsSeverityAndSource() throws IOException {
        List<String> rows = Files.readAllLines(Path.of("models/caution.md")).stream()
                .filter(line -> line.startsWith("| LC-"))
                .map(line -> line.split(" \\| ", -1))
                .map(cells ->
                        cells[0].substring(2) + "|" + cells[1] + "|" + cells[3].substring(0, cells[3].length() - 2))
                .toList();
        assertEquals(
                Stream.of(CautionKind.values())
                        .map(kind -> kind.code() + "|" + kind.severity().code() + "|"
                                + kind.source().metric())
                        .toList(),
                rows);
    }

    @ParameterizedTest
    @EnumSource(CautionKind.class)
    void eachSaysWhoDecidesAndWhereItComesFrom(CautionKind kind) {
        assertFalse(kind.decides().metric().isBlank(), kind.code());
        assertFalse(kind.source().metric().isBlank(), kind.code());
    }

    @ParameterizedTest
    @EnumSource(WorkStep.class)
    void someDangerStandsBesideEachStepOfTheWork(WorkStep step) {
        assertTrue(
                Stream.of(CautionKind.values())
                        .anyMatch(kind -> kind.severity() == Severity.DANGER
                                && kind.beside().contains(step)),
                step.name());
    }

    /** A sentence left behind by a kind that is gone would never be said again, and nobody would notice. */
    @Test
    void everySentenceBelongsToAKind() {
        Set<String> strays = new TreeSet<>(CautionKind.SENTENCES.codes());
        strays.removeIf(code -> Stream.of(CautionKind.values())
                .anyMatch(kind -> code.equals(kind.code()) || code.startsWith(kind.code() + ".")));
        strays.removeIf(code -> code.startsWith("ask.") || code.startsWith("when."));
        assertEquals(Set.of("ask-first"), strays);
    }

    /** A distance that a standard states in both units is cited as it stands there. */
    @Test
    void aNumberStandsInAHole() {
        Set<String> cited = Set.of("18 in (457 mm)", "36 in (914 mm)", "3 ft (914 mm)");
        assertEquals(Set.of(), BareNumbers.in(ClassStrings.files(CautionKind.class, ".properties"), cited));
        assertEquals(Set.of(), BareNumbers.in(ClassStrings.files(Circulation.class, ".properties"), Set.of()));
    }
}
