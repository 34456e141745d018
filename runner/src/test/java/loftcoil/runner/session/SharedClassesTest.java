package loftcoil.runner.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** How the machine for snippets is told of the archive of classes. */
class SharedClassesTest {

    private static final Path JAR = Path.of("app", "loftcoil.jar").toAbsolutePath();

    @AfterEach
    void forget() {
        System.clearProperty(SharedClasses.PROPERTY);
    }

    @Test
    void withoutAnArchiveNothingChanges() {
        assertEquals(List.of(), SharedClasses.options());
        assertEquals(JAR.toString(), SharedClasses.name(JAR));
    }

    @Test
    void theArchiveKnowsTheJarFromTheFolderItRunsIn() {
        System.setProperty(SharedClasses.PROPERTY, "app/loftcoil.jsa");

        assertTrue(SharedClasses.options().contains("-XX:SharedArchiveFile=app/loftcoil.jsa"));
        assertEquals(Path.of("app", "loftcoil.jar").toString(), SharedClasses.name(JAR));
        Path elsewhere = Path.of("/", "elsewhere", "engine.jar").toAbsolutePath();
        assertEquals(elsewhere.toString(), SharedClasses.name(elsewhere));
    }
}
