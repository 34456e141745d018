package loftcoil.runner.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InterruptedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.atomic.AtomicInteger;
import org.jline.terminal.Size;
import org.jline.terminal.Terminal;
import org.jline.terminal.impl.ExternalTerminal;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** The real console before a terminal of 60 columns and 20 rows whose keys are bytes. */
@Timeout(60)
class JLineConsoleTest {

    private static final int CTRL_C = 3;

    private final ByteArrayOutputStream screen = new ByteArrayOutputStream();
    private final Keys keys = new Keys();
    private JLineConsole console;

    @BeforeEach
    void open() throws IOException {
        // No terminal of the system: its own would need one that a test run may not have.
        Terminal terminal = new ExternalTerminal("a small screen", "xterm", keys, screen, StandardCharsets.UTF_8);
        terminal.setSize(new Size(60, 20));
        console = new JLineConsole(terminal);
    }

    @AfterEach
    void close() throws IOException {
        console.close();
    }

    @Test
    void controlAndCStopsARunAndNothingElse() throws Exception {
        AtomicInteger stops = new AtomicInteger();
        CountDownLatch stopped = new CountDownLatch(1);
        Pages pages = new Pages(console);
        String came = pages.running(
                () -> {
                    press(CTRL_C);
                    await(stopped);
                    return "stopped";
                },
                () -> {
                    stops.incrementAndGet();
                    stopped.countDown();
                });
        assertEquals("stopped", came);
        assertEquals(1, stops.get());
        // What follows is asked as ever.
        type("on\r");
        assertEquals(Optional.of("on"), pages.ask("[Enter goes on] "));
    }

    @Test
    void atAPromptControlAndCLeaves() throws Exception {
        Thread learner = new Thread(() -> {
            while (!screen.toString(StandardCharsets.UTF_8).contains("[Enter goes on]")) {
                Thread.onSpinWait();
            }
            press(CTRL_C);
        });
        learner.start();
        assertEquals(Optional.empty(), new Pages(console).ask("[Enter goes on] "));
        learner.join();
    }

    @Test
    void whatFillsTheScreenWaitsAndADangerIsBoldInTheScreensOwnColour() throws Exception {
        Pages pages = new Pages(console);
        type("\r");
        for (int line = 1; line <= 25; line++) {
            pages.say("line " + line);
        }
        pages.warn("DANGER: a dry coil bursts.");
        String shown = screen.toString(StandardCharsets.UTF_8);
        assertTrue(shown.indexOf("line 19") < shown.indexOf("[More:"), shown);
        assertTrue(shown.indexOf("[More:") < shown.indexOf("line 20"), shown);
        assertTrue(shown.contains("\u001b[1mDANGER: a dry coil bursts."), shown);
        assertFalse(shown.substring(shown.indexOf("line 25")).matches("(?s).*\u001b\\[3[0-7]m.*"), shown);
    }

    private void press(int key) {
        keys.pressed.add(key);
    }

    private void type(String text) {
        text.chars().forEach(this::press);
    }

    private static void await(CountDownLatch latch) {
        try {
            latch.await();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /** What is typed, by whichever thread, one key after the other; it never ends. */
    private static final class Keys extends InputStream {
        private final BlockingQueue<Integer> pressed = new LinkedBlockingQueue<>();

        @Override
        public int read() throws IOException {
            try {
                return pressed.take();
            } catch (InterruptedException closed) {
                throw new InterruptedIOException();
            }
        }

        @Override
        public int read(byte[] into, int from, int length) throws IOException {
            into[from] = (byte) read();
            return 1;
        }

        @Override
        public int available() {
            return pressed.size();
        }
    }
}
