package loftcoil.runner.cli;

import java.awt.Desktop;
import java.awt.GraphicsEnvironment;
import java.io.IOException;
import java.net.URI;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.function.Function;

/**
 * Opens an address in the person's browser: by the desktop's own command, by Java's way to the desktop, by the commands that some
 * systems have besides. Where none works, it says so; the printed address works in any browser.
 */
final class Browser {

    /** A command that has not failed by then has opened something, or asks the person which browser to take. */
    private static final long PATIENCE_S = 8;

    private static final String NONE =
            "No browser could be opened from here. Copy the address above into one on this machine.";

    private Browser() {}

    /**
     * Asks in a thread of its own: a desktop that does not answer holds up nobody, nor the end of the program.
     *
     * @param address what to open
     * @param tell takes the words where no way worked
     */
    static void open(URI address, Consumer<String> tell) {
        Thread thread = new Thread(
                () -> {
                    if (!opened(ways(), address)) {
                        tell.accept(NONE);
                    }
                },
                "open the browser");
        thread.setDaemon(true);
        thread.start();
    }

    /** Tries one way after the other; true once one has worked. */
    static boolean opened(List<Function<URI, Boolean>> ways, URI address) {
        return ways.stream().anyMatch(way -> way.apply(address));
    }

    /** The ways of this system. */
    static List<Function<URI, Boolean>> ways() {
        return ways(System.getProperty("os.name", ""), System.getenv());
    }

    /** The ways of a system, the likeliest first; none where there is no screen to open a window on. */
    static List<Function<URI, Boolean>> ways(String system, Map<String, String> environment) {
        String name = system.toLowerCase(Locale.ROOT);
        if (name.startsWith("windows")) {
            return List.of(
                    Browser::desktop, by("rundll32", "url.dll,FileProtocolHandler"), by("cmd", "/c", "start", ""));
        }
        if (name.startsWith("mac")) {
            return List.of(
                    by("open"),
                    Browser::desktop,
                    by("osascript", "-e", "on run argv", "-e", "open location (item 1 of argv)", "-e", "end run"));
        }
        if (environment.containsKey("WSL_DISTRO_NAME")) {
            return List.of(by("rundll32.exe", "url.dll,FileProtocolHandler"), by("xdg-open"), Browser::desktop);
        }
        boolean screen = environment.containsKey("DISPLAY") || environment.containsKey("WAYLAND_DISPLAY");
        return screen ? List.of(by("xdg-open"), Browser::desktop, by("x-www-browser"), by("gio", "open")) : List.of();
    }

    private static Function<URI, Boolean> by(String... command) {
        return address -> ran(command, address);
    }

    private static boolean ran(String[] command, URI address) {
        List<String> whole = new ArrayList<>(List.of(command));
        whole.add(address.toString());
        try {
            Process started = new ProcessBuilder(whole)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .redirectError(ProcessBuilder.Redirect.DISCARD)
                    .start();
            return !started.waitFor(PATIENCE_S, TimeUnit.SECONDS) || started.exitValue() == 0;
        } catch (IOException noSuchCommand) {
            return false;
        } catch (InterruptedException ending) {
            Thread.currentThread().interrupt();
            return true;
        }
    }

    private static boolean desktop(URI address) {
        try {
            if (GraphicsEnvironment.isHeadless()
                    || !Desktop.isDesktopSupported()
                    || !Desktop.getDesktop().isSupported(Desktop.Action.BROWSE)) {
                return false;
            }
            Desktop.getDesktop().browse(address);
            return true;
        } catch (IOException | RuntimeException | Error noBrowser) {
            // An Error too: a window system that is gone throws one.
            return false;
        }
    }
}
