package loftcoil.runner.page;

import java.util.function.Consumer;

/**
 * How to open the page.
 *
 * @param port port to listen on, 1 to 65535, or 0 for any free one
 * @param trouble told of each failure inside Loftcoil itself; the learner sees only a short sentence
 * @param press makes what can be printed
 */
public record PageSetup(int port, Consumer<Throwable> trouble, BuildSheetPrinter press) {

    /**
     * Checks the port.
     *
     * @throws IllegalArgumentException where the port is not 0 to 65535
     */
    public PageSetup {
        if (!(port >= 0 && port <= 65535)) {
            throw new IllegalArgumentException("port " + port + ": allowed are 1 to 65535, or 0 for any free one");
        }
    }

    /** With nothing to print. */
    public PageSetup(int port, Consumer<Throwable> trouble) {
        this(port, trouble, BuildSheetPrinter.NONE);
    }

    /** Any free port; failures are not told to anybody. */
    public static PageSetup anyPort() {
        return new PageSetup(0, failure -> {});
    }
}
