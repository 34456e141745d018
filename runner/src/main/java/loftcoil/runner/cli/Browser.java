package loftcoil.runner.cli;

import java.awt.Desktop;
import java.awt.GraphicsEnvironment;
import java.io.IOException;
import java.io.PrintWriter;
import java.net.URI;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.TimeUnit;

/**
 * Opens an address in the person's browser: by Java's own desktop, else by the opener of the system. Where neither can, it says so;
 * the printed address works in any browser.
 */
final class Browser {

    private static final int OPENER_S = 5;

    private Browser() {}

    /** One way to open an address. */
    @FunctionalInterface
    interface Way {
        /** Whether it took the address. */
        boolean takes(URI address) throws IOException, InterruptedException;
    }

    /** Asks in a thread of its own: a desktop that does not answer holds up nobody, nor the end of the program. */
    static void open(URI address, PrintWriter out) {
        Thread thread = new Thread(
                () -> open(address, ways(System.getProperty("os.name"), System.getenv()), out), "open the browser");
        thread.setDaemon(true);
        thread.start();
    }

    /** Tries one way after the other, and says it where none takes the address. */
    static void open(URI address, List<Way> ways, PrintWriter out) {
        if (ways.stream().noneMatch(way -> takes(way, address))) {
            out.println("No browser could be opened from here: open the address above yourself.");
            out.flush();
        }
    }

    private static boolean takes(Way way, URI address) {
        try {
            return way.takes(address);
        } catch (IOException | RuntimeException | Error notThisWay) {
            // An Error too: a window system that is gone throws one. The next way may do.
            return false;
        } catch (InterruptedException end) {
            Thread.currentThread().interrupt();
            return false;
        }
    }

    private static List<Way> ways(String system, Map<String, String> environment) {
        List<Way> ways = new ArrayList<>();
        ways.add(Browser::byDesktop);
        List<String> opener = opener(system, environment);
        if (!opener.isEmpty()) {
            ways.add(address -> byOpener(opener, address));
        }
        return List.copyOf(ways);
    }

    /**
     * The command of a system that opens an address, without the address; empty where it has no screen, or none is known.
     *
     * @param system its name, as Java tells it
     * @param environment what its shell has set
     */
    static List<String> opener(String system, Map<String, String> environment) {
        String name = system.toLowerCase(Locale.ROOT);
        if (name.startsWith("windows")) {
            return List.of("rundll32", "url.dll,FileProtocolHandler");
        }
        if (name.startsWith("mac")) {
            return List.of("open");
        }
        if (environment.containsKey("WSL_DISTRO_NAME")) {
            return List.of("rundll32.exe", "url.dll,FileProtocolHandler");
        }
        boolean screen = environment.containsKey("DISPLAY") || environment.containsKey("WAYLAND_DISPLAY");
        return screen ? List.of("xdg-open") : List.of();
    }

    private static boolean byDesktop(URI address) throws IOException {
        if (GraphicsEnvironment.isHeadless()
                || !Desktop.isDesktopSupported()
                || !Desktop.getDesktop().isSupported(Desktop.Action.BROWSE)) {
            return false;
        }
        Desktop.getDesktop().browse(address);
        return true;
    }

    /** An opener that is still at work after some seconds is the browser itself. */
    private static boolean byOpener(List<String> opener, URI address) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(opener);
        command.add(address.toString());
        Process process = new ProcessBuilder(command)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        return !process.waitFor(OPENER_S, TimeUnit.SECONDS) || process.exitValue() == 0;
    }
}
