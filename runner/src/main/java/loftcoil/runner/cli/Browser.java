package loftcoil.runner.cli;

import java.awt.Desktop;
import java.awt.GraphicsEnvironment;
import java.io.IOException;
import java.net.URI;

/** Opens an address in the person's browser, where there is a desktop; otherwise does nothing: the address is printed too. */
final class Browser {

    private Browser() {}

    static void open(URI address) {
        try {
            if (!GraphicsEnvironment.isHeadless()
                    && Desktop.isDesktopSupported()
                    && Desktop.getDesktop().isSupported(Desktop.Action.BROWSE)) {
                Desktop.getDesktop().browse(address);
            }
        } catch (IOException | UnsupportedOperationException | LinkageError noBrowser) {
            // Nothing is lost: the printed address works in any browser.
            return;
        }
    }
}
