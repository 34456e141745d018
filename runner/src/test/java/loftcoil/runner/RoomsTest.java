package loftcoil.runner;

import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The ladder of rooms and what no room but one may touch; and that each rule finds what breaks it. */
class RoomsTest {

    /** Far fewer than there are: it only has to notice an importer that sees nothing. */
    private static final int LEAST_CLASSES = 80;

    private static final JavaClasses RUNNER = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("loftcoil.runner");
    private static final RoomRules RULES = new RoomRules("loftcoil.runner");

    private static final JavaClasses BAD = new ClassFileImporter().importPackages("loftcoil.badrooms");
    private static final RoomRules BAD_RULES = new RoomRules("loftcoil.badrooms");

    @Test
    void theImporterSeesTheRunner() {
        assertTrue(RUNNER.size() >= LEAST_CLASSES, "only " + RUNNER.size() + " classes seen");
    }

    @Test
    void everyClassStandsInARoomOfTheLadder() {
        assertEquals(Set.of(), RULES.strays(RUNNER));
    }

    @Test
    void aRoomUsesOnlyRoomsBeforeIt() {
        assertEquals(Set.of(), RULES.climbs(RUNNER));
        assertEquals(
                Set.of("lesson.Climbs -> terminal.Prints", "page.LooksIntoTerminal -> terminal.Prints"),
                BAD_RULES.climbs(BAD));
    }

    @Test
    void noCycleOfPackages() {
        slices().matching("loftcoil.runner.(*)..").should().beFreeOfCycles().check(RUNNER);
    }

    @Test
    void oneRoomKnowsJShellAndOneXChart() {
        assertEquals(Set.of(), RULES.outside(RUNNER, "session", "jdk.jshell"));
        assertEquals(Set.of(), RULES.outside(RUNNER, "chart", "org.knowm"));
        assertEquals(Set.of("lesson.Climbs -> jdk.jshell.JShell"), BAD_RULES.outside(BAD, "session", "jdk.jshell"));
    }

    @Test
    void theEngineIsEnteredByItsDoors() {
        assertEquals(Set.of(), RULES.engineBackDoors(RUNNER));
        assertEquals(Set.of("lesson.Climbs -> loftcoil.engine.water.Water"), BAD_RULES.engineBackDoors(BAD));
    }

    @Test
    void onlyTheCommandLineEndsTheProcess() {
        assertOnly(
                RULES.exits(RUNNER),
                Set.of("cli"),
                // Ends the snippets' own process when nobody is left to run them for.
                Set.of("session.SnippetAgent -> Runtime.halt"));
        assertEquals(Set.of("lesson.Climbs -> System.exit"), BAD_RULES.exits(BAD));
    }

    @Test
    void onlyTheCommandLineAndTheTerminalPrint() {
        assertOnly(
                RULES.prints(RUNNER),
                Set.of("cli", "terminal"),
                Set.of(
                        // Runs in the snippets' own process: the streams it takes over are the snippets'.
                        "session.SnippetStreams -> System.out",
                        "session.SnippetStreams -> System.err",
                        // A plot shown where no lesson listens, as in the JDK's own shell, says where its file is.
                        "chart.Plot -> System.out"));
        assertEquals(Set.of("lesson.Climbs -> System.err", "terminal.Prints -> System.out"), BAD_RULES.prints(BAD));
    }

    @Test
    void onlyTheCommandLineTheProofAndTheSessionReadAClock() {
        assertOnly(
                RULES.clocks(RUNNER),
                Set.of("cli", "session", "prove"),
                // The date in the name of a design put by is that of its file, as the learner's own calendar has it.
                Set.of("progress.SafeFile -> ZoneId.systemDefault"));
        assertEquals(Set.of("lesson.Climbs -> Instant.now", "lesson.Climbs -> System.nanoTime"), BAD_RULES.clocks(BAD));
    }

    /** Nothing outside those rooms but the exemptions, and no exemption that is no longer needed. */
    private static void assertOnly(Set<String> found, Set<String> rooms, Set<String> exempt) {
        Set<String> others = found.stream()
                .filter(breach -> !rooms.contains(breach.substring(0, breach.indexOf('.'))))
                .collect(Collectors.toCollection(TreeSet::new));
        assertEquals(new TreeSet<>(exempt), others);
    }
}
