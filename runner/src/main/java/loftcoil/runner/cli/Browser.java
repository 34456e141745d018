package loftcoil.runner.cli;

import java.awt.Desktop;
import java.awt.GraphicsEnvironment;
import java.io.IOException;
import java.net.URI;

/** Opens an address in the person's browser, where there is a desktop; otherwise does nothing: the address is printed too. */
final class Browser {

    private Browser() {}

    /** Asks the desktop in a thread of its own: one that does not answer holds up nobody, nor the end of the program. */
    static void open(URI address) {
        Thread thread = new Thread(() -> ask(address), "open the browser");
        thread.setDaemon(true);
        thread.start();
    }

    private static void ask(URI address) {
        try {
            if (!GraphicsEnvironment.isHeadless()
                    && Desktop.isDesktopSupported()
                    && Desktop.getDesktop().isSupported(Desktop.Action.BROWSE)) {
                Desktop.getDesktop().browse(address);
            }
        } catch (IOException | RuntimeException | Error noBrowser) {
            // An Error too: a window system that is gone throws one. Nothing is lost: the printed address works in any
            // browser.
            return;
        }
    }
}
