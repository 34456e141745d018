package loftcoil.runner.chart;

import java.io.IOException;
import java.net.InetSocketAddress;
import java.net.Socket;
import java.net.SocketAddress;
import java.net.StandardProtocolFamily;
import java.net.UnixDomainSocketAddress;
import java.nio.channels.SocketChannel;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Keeps drawing apart from the screen. Java's drawing fails for good where {@code DISPLAY} names an X screen that is
 * gone, as after an earlier login or over ssh, though nothing here is drawn on a screen.
 */
public final class Screen {

    private static final String HEADLESS = "java.awt.headless";
    private static final Pattern DISPLAY = Pattern.compile("(?:unix|([\\w.-]*)):(\\d{1,4})(?:\\.\\d+)?");
    private static final int FIRST_PORT = 6000;
    private static final int WAIT_MS = 1000;

    private Screen() {}

    /** Does without a screen where the one that is named does not answer. Counts only before anything is drawn. */
    public static void leaveIfGone() {
        String system = System.getProperty("os.name", "").toLowerCase(Locale.ROOT);
        boolean named = !system.contains("windows") && !system.contains("mac");
        if (named && System.getProperty(HEADLESS) == null && gone(System.getenv())) {
            System.setProperty(HEADLESS, "true");
        }
    }

    /** True where an X screen is named and does not answer. */
    static boolean gone(Map<String, String> environment) {
        Matcher name = DISPLAY.matcher(environment.getOrDefault("DISPLAY", ""));
        if (!name.matches()) {
            return false;
        }
        String host = name.group(1) == null ? "" : name.group(1);
        int number = Integer.parseInt(name.group(2));
        return host.isEmpty()
                ? !answers(UnixDomainSocketAddress.of("/tmp/.X11-unix/X" + number))
                : !answers(new InetSocketAddress(host, FIRST_PORT + number));
    }

    private static boolean answers(SocketAddress screen) {
        try {
            if (screen instanceof UnixDomainSocketAddress) {
                try (SocketChannel channel = SocketChannel.open(StandardProtocolFamily.UNIX)) {
                    return channel.connect(screen);
                }
            }
            try (Socket socket = new Socket()) {
                socket.connect(screen, WAIT_MS);
                return true;
            }
        } catch (IOException | UnsupportedOperationException e) {
            return false;
        }
    }
}
