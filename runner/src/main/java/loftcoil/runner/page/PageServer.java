package loftcoil.runner.page;

import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.URI;
import java.util.concurrent.SynchronousQueue;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import loftcoil.runner.show.LearnerApp;

/**
 * Serves the page on 127.0.0.1. The opening address carries a secret; who has it gets a cookie and is sent on to a clean
 * address. Nothing else is answered with the learner's work.
 */
public final class PageServer implements AutoCloseable {

    /**
     * Requests taken in at once. Many more than are worked on: one whose rest does not come holds its thread, and must hold
     * up nobody else.
     */
    private static final int THREADS = 128;

    /** Requests worked on at once; a stop and a file need no such place. */
    private static final int PLACES = 6;

    private static final int WAITING = 64;

    private final HttpServer server;
    private final ThreadPoolExecutor pool;
    private final URI address;

    private PageServer(HttpServer server, ThreadPoolExecutor pool, URI address) {
        this.server = server;
        this.pool = pool;
        this.address = address;
    }

    /**
     * Starts serving.
     *
     * @param bench what the page works on; it stays open when the server closes
     * @param setup port and where failures are told
     * @throws IOException where the port cannot be had
     */
    public static PageServer open(LearnerApp bench, PageSetup setup) throws IOException {
        tune();
        InetSocketAddress place =
                new InetSocketAddress(InetAddress.getByAddress(new byte[] {127, 0, 0, 1}), setup.port());
        HttpServer server = HttpServer.create(place, WAITING);
        int port = server.getAddress().getPort();
        Secret secret = Secret.make(port);
        PageApi api = new PageApi(bench);
        Router router =
                new Router(new Gate(port, secret), secret, api, new Sheets(setup.press()), setup.trouble(), PLACES);
        // No more threads than are at work: each holds a stack and buffers of its own.
        ThreadPoolExecutor pool =
                new ThreadPoolExecutor(0, THREADS, 30, TimeUnit.SECONDS, new SynchronousQueue<>(), work -> {
                    Thread thread = new Thread(work, "page");
                    thread.setDaemon(true);
                    return thread;
                });
        server.setExecutor(pool);
        server.createContext("/", router);
        server.start();
        pool.execute(api::makeReady);
        return new PageServer(server, pool, URI.create("http://127.0.0.1:" + port + Secret.PATH + secret.token()));
    }

    /** The address to open, with its secret. */
    public URI address() {
        return address;
    }

    /** Ends all serving at once. */
    @Override
    public void close() {
        server.stop(0);
        pool.shutdownNow();
    }

    /**
     * The JDK's server reads these when its classes load: no delay on small packets, and a request whose rest has not come
     * after five seconds is dropped. All comes from this machine, so that is long.
     */
    private static void tune() {
        setIfAbsent("sun.net.httpserver.nodelay", "true");
        setIfAbsent("sun.net.httpserver.maxReqTime", "5");
    }

    private static void setIfAbsent(String key, String value) {
        if (System.getProperty(key) == null) {
            System.setProperty(key, value);
        }
    }
}
