package loftcoil.runner.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** A Java without what snippets need is told so. */
@Timeout(900)
class JdkNeededTest {

    /** Opens a session and prints what it is told. */
    static final class Opens {

        private Opens() {}

        /** Ends with status 0 only by the refusal. */
        public static void main(String[] args) {
            try (Session opened = SharedSession.open()) {
                System.out.println("opened, and gives " + opened.run("one", "1"));
                System.exit(1);
            } catch (SessionException told) {
                System.out.println(told.getMessage());
            }
        }
    }

    @Test
    void aJdkWithoutItsShellIsTold() throws Exception {
        String path =
                SnippetClassPath.find().stream().map(Path::toString).collect(Collectors.joining(File.pathSeparator));
        Process java = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "--limit-modules",
                        "java.se,jdk.compiler,jdk.zipfs",
                        "-cp",
                        path,
                        Opens.class.getName())
                .redirectErrorStream(true)
                .start();
        String told = new String(java.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertEquals(0, java.waitFor(), told);
        assertTrue(told.startsWith("Snippets need a whole JDK, 17 or newer"), told);
        assertTrue(told.contains("has no jdk.jshell"), told);
    }
}
