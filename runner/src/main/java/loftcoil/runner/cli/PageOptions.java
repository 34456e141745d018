package loftcoil.runner.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.net.BindException;
import java.util.concurrent.CountDownLatch;
import loftcoil.engine.fault.RefusedException;
import loftcoil.runner.page.PageServer;
import loftcoil.runner.page.PageSetup;
import loftcoil.runner.show.LearnerApp;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** How the page is opened: options of {@code page} and of the bare command alike. */
final class PageOptions {

    private static final int LEAST_PORT = 1024;
    private static final int GREATEST_PORT = 65_535;

    @Mixin
    private LearnerOptions learner = new LearnerOptions();

    @Option(
            names = "--port",
            paramLabel = "N",
            defaultValue = "0",
            description = "port on this machine, 1024 to 65535 (default: any free one)")
    private int port;

    @Option(names = "--no-browser", description = "only print the address")
    private boolean noBrowser;

    int run(PrintWriter out, PrintWriter err) throws IOException, InterruptedException {
        if (!(port == 0 || (port >= LEAST_PORT && port <= GREATEST_PORT))) {
            throw RefusedException.of("--port", Integer.toString(port), "1024 to 65535, or 0 for any free one");
        }
        CountDownLatch ended = new CountDownLatch(1);
        try (LearnerApp bench = learner.open();
                PageServer server = open(bench, setup(bench, err))) {
            // Ctrl+C ends the process from outside this thread: the folder and the running Java are let go there too.
            Runtime.getRuntime().addShutdownHook(new Thread(ended::countDown, "page end"));
            out.println("Loftcoil is open at " + server.address());
            out.println("Only this machine can reach it. Ctrl+C here ends it; your work is kept at every step.");
            out.flush();
            if (!noBrowser) {
                Browser.open(server.address(), out);
            }
            ended.await();
        }
        return Refusals.FINE;
    }

    private PageSetup setup(LearnerApp bench, PrintWriter err) {
        return new PageSetup(port, trouble -> tell(trouble, err), new HandoutPrinter(bench));
    }

    /** The whole account, for whoever mends it: the page has only a line. */
    private static void tell(Throwable trouble, PrintWriter err) {
        err.println("Loftcoil stumbled over a fault of its own:");
        trouble.printStackTrace(err);
        err.flush();
    }

    private PageServer open(LearnerApp bench, PageSetup setup) throws IOException {
        try {
            return PageServer.open(bench, setup);
        } catch (BindException taken) {
            throw RefusedException.of(
                    "--port", port + " is taken by another program", "a free port, or no --port for any free one");
        }
    }
}
