package loftcoil.runner.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@Timeout(900)
class ScreenTest {

    /** Draws one chart. */
    static final class Draws {

        private Draws() {}

        /** Prints that it is drawn. */
        public static void main(String[] args) {
            ChartOrder order = Plot.plot("T")
                    .across("x", "m", new double[] {1, 2})
                    .curve("c", new double[] {1, 2})
                    .order();
            System.out.print(ChartDrawer.draw(order).svg().contains("path") ? "drawn" : "empty");
        }
    }

    @Test
    void aChartIsDrawnWhereTheNamedScreenIsGone() throws Exception {
        ProcessBuilder builder = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        Draws.class.getName())
                .redirectErrorStream(true);
        builder.environment().put("DISPLAY", ":7777");
        Process java = builder.start();
        String said = new String(java.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertEquals(0, java.waitFor(), said);
        assertTrue(said.endsWith("drawn"), said);
    }

    @ParameterizedTest
    @ValueSource(strings = {":7777", "unix:7777", ":7777.0"})
    void aScreenThatDoesNotAnswerIsGone(String display) {
        assertTrue(Screen.gone(Map.of("DISPLAY", display)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "somewhere else", "/private/tmp/launch:0"})
    void whereNoXScreenIsNamedThereIsNothingToLeave(String display) {
        assertFalse(Screen.gone(Map.of("DISPLAY", display)));
    }

    @Test
    void aScreenThatAnswersStays() throws Exception {
        String last = "";
        for (int number = 3000; number < 3100; number++) {
            try (ServerSocket screen = new ServerSocket(6000 + number, 1, InetAddress.getLoopbackAddress())) {
                assertTrue(screen.isBound());
                assertFalse(Screen.gone(Map.of("DISPLAY", "localhost:" + number)));
                return;
            } catch (java.net.BindException taken) {
                // Another program has this port: the next one will do.
                last = taken.getMessage();
            }
        }
        fail("no free port from 9000 to 9099: " + last);
    }
}
