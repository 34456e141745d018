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

    /** The cells of the page's row of each kind: code, severity, raised where, source, why so grave. */
    private static List<List<String>> rows() throws IOException {
        return Files.readAllLines(Path.of("models/caution.md")).stream()
                .filter(line -> line.startsWith("| LC-"))
                .map(line -> line.substring(2, line.lastIndexOf('|')).strip())
                .map(line -> List.of(line.split(" \\| ", -1)))
                .toList();
    }

    @Test
    void thePageOfModelsListsEveryCautionWithItsSeverityAndSource() throws IOException {
        assertEquals(
                Stream.of(CautionKind.values())
                        .map(kind -> kind.code() + "|" + kind.severity().code() + "|"
                                + kind.source().metric())
                        .toList(),
                rows().stream()
                        .map(cells -> cells.get(0) + "|" + cells.get(1) + "|" + cells.get(3))
                        .toList());
    }

    /** Whoever adds a kind says what has to happen until somebody is hurt. */
    @Test
    void thePageSaysOfEveryCautionWhyItIsAsGraveAsItIs() throws IOException {
        assertEquals(
                List.of(),
                rows().stream()
                        .filter(cells -> cells.size() != 5 || cells.get(4).split(" ").length < 3)
                        .toList());
    }

    @Test
    void theGravestLeadAndOfThoseTheSoonest() {
        List<Caution> found = Stream.of(
                        CautionKind.LEGIONELLA,
                        CautionKind.CREOSOTE,
                        CautionKind.SUN_FACE,
                        CautionKind.VALVE,
                        CautionKind.SCALD)
                .map(kind -> new Caution(kind, kind.severity(), kind.decides()))
                .toList();
        List<Caution> milder = List.of(found.get(1).milder(Severity.WARNING), found.get(0));
        assertEquals(
                List.of("LC-SCALD", "LC-VALVE", "LC-CREOSOTE", "LC-LEGIONELLA", "LC-SUN-FACE"),
                new CautionReport(found, List.of())
                        .cautions().stream().map(Caution::code).toList());
        assertEquals(
                List.of("LC-LEGIONELLA", "LC-CREOSOTE"),
                new CautionReport(milder, List.of())
                        .cautions().stream().map(Caution::code).toList());
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
