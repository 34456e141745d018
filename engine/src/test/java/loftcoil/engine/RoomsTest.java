package loftcoil.engine;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaCall;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** The ladder of rooms and what no room of the engine may touch. */
class RoomsTest {

    /** Low to high: a room uses itself and rooms before it. */
    private static final List<String> LADDER = List.of(
            "constant",
            "words",
            "fault",
            "json",
            "watch",
            "water",
            "gas",
            "heat",
            "pipe",
            "fire",
            "sun",
            "tank",
            "use",
            "loop",
            "supply",
            "design",
            "survey",
            "run",
            "start",
            "caution",
            "sheet",
            "study",
            "clear",
            "build");

    /** The rooms that read or write JSON. */
    private static final Set<String> JSON_ROOMS = Set.of("json", "design", "survey", "sheet", "clear");

    /** Far fewer than there are: it only has to notice an importer that sees nothing. */
    private static final int LEAST_CLASSES = 25;

    private static final String ROOT = "loftcoil.engine.";

    private static final JavaClasses ENGINE = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("loftcoil.engine");

    @Test
    void theImporterSeesTheEngine() {
        assertTrue(ENGINE.size() >= LEAST_CLASSES, "only " + ENGINE.size() + " classes seen");
    }

    @Test
    void everyClassStandsInARoomOfTheLadder() {
        Set<String> strays = new TreeSet<>();
        for (JavaClass type : ENGINE) {
            if (!LADDER.contains(room(type))) {
                strays.add(type.getName());
            }
        }
        assertEquals(Set.of(), strays);
    }

    @Test
    void aRoomUsesOnlyRoomsBeforeIt() {
        List<String> climbs = new ArrayList<>();
        for (JavaClass type : ENGINE) {
            type.getDirectDependenciesFromSelf().stream()
                    .filter(use -> use.getTargetClass().getPackageName().startsWith(ROOT))
                    .filter(use -> LADDER.indexOf(room(use.getTargetClass())) > LADDER.indexOf(room(type)))
                    .forEach(use -> climbs.add(use.getDescription()));
        }
        assertEquals(List.of(), climbs);
    }

    @Test
    void noCycleOfPackages() {
        slices().matching("loftcoil.engine.(*)..").should().beFreeOfCycles().check(ENGINE);
    }

    @Test
    void theEngineKnowsNothingOfTheRunner() {
        noClasses()
                .should()
                .dependOnClassesThat()
                .resideInAPackage("loftcoil.runner..")
                .check(ENGINE);
    }

    @Test
    void theEngineTouchesNoFilesAndNoNetwork() {
        noClasses()
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("java.nio.file..", "java.net..", "java.nio.channels..")
                .orShould()
                .dependOnClassesThat(
                        named("a file class of java.io", "java\\.io\\.(File(?!NotFoundException).*|RandomAccessFile)"))
                .check(ENGINE);
    }

    @Test
    void theEnginePrintsNothing() {
        noClasses()
                .should()
                .accessField(System.class, "out")
                .orShould()
                .accessField(System.class, "err")
                .orShould()
                .callMethod(Throwable.class, "printStackTrace")
                .check(ENGINE);
    }

    @Test
    void theEngineReadsNoClock() {
        noClasses()
                .should()
                .callMethod(System.class, "currentTimeMillis")
                .orShould()
                .callMethod(System.class, "nanoTime")
                .orShould()
                .callMethodWhere(now())
                .orShould()
                .dependOnClassesThat(named("a clock or a java.util.Date", "java\\.time\\.Clock|java\\.util\\.Date"))
                .check(ENGINE);
    }

    @Test
    void onlyTheRoomsOfDesignsAndSheetsKnowJackson() {
        List<String> uses = new ArrayList<>();
        for (JavaClass type : ENGINE) {
            if (!JSON_ROOMS.contains(room(type))) {
                type.getDirectDependenciesFromSelf().stream()
                        .filter(use -> use.getTargetClass().getPackageName().startsWith("com.fasterxml"))
                        .forEach(use -> uses.add(use.getDescription()));
            }
        }
        assertEquals(List.of(), uses);
    }

    /** The first package below the root: a room may have packages of its own. */
    private static String room(JavaClass type) {
        String below = type.getPackageName() + ".";
        return below.startsWith(ROOT) && below.length() > ROOT.length()
                ? below.substring(ROOT.length(), below.indexOf('.', ROOT.length()))
                : "";
    }

    private static DescribedPredicate<JavaClass> named(String description, String pattern) {
        return DescribedPredicate.describe(description, type -> type.getName().matches(pattern));
    }

    private static DescribedPredicate<JavaCall<?>> now() {
        return DescribedPredicate.describe(
                "java.time now()",
                call -> call.getName().equals("now")
                        && call.getTargetOwner().getPackageName().startsWith("java.time"));
    }
}
