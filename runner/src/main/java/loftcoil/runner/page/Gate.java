package loftcoil.runner.page;

import com.sun.net.httpserver.Headers;
import com.sun.net.httpserver.HttpExchange;
import java.util.List;
import java.util.Set;

/**
 * Who may ask. A page of another site must not reach us through the learner's browser, neither by a name that it points at
 * this machine (Host) nor by a form or script of its own (Origin, Sec-Fetch-Site).
 */
final class Gate {

    private final Set<String> hosts;
    private final Set<String> origins;
    private final Secret secret;

    Gate(int port, Secret secret) {
        this.hosts = Set.of("127.0.0.1:" + port, "localhost:" + port);
        this.origins = Set.of("http://127.0.0.1:" + port, "http://localhost:" + port);
        this.secret = secret;
    }

    /** Refuses all that is not of this machine or was meant for another name. */
    void checkPlace(HttpExchange exchange) {
        if (!exchange.getRemoteAddress().getAddress().isLoopbackAddress()) {
            throw new RefusedRequest(403, "Loftcoil answers this machine only.");
        }
        List<String> given = all(exchange, "Host");
        if (given.size() != 1 || !hosts.contains(given.get(0))) {
            throw new RefusedRequest(
                    421, "This address is not Loftcoil's. Use the one printed in its terminal window.");
        }
    }

    /** Refuses what a page of another site has asked for. */
    void checkSameSite(HttpExchange exchange) {
        for (String site : all(exchange, "Sec-Fetch-Site")) {
            if (!site.equals("same-origin") && !site.equals("none")) {
                throw new RefusedRequest(403, "Only Loftcoil's own page may ask for this.");
            }
        }
        for (String origin : all(exchange, "Origin")) {
            if (!origins.contains(origin)) {
                throw new RefusedRequest(403, "Only Loftcoil's own page may ask for this.");
            }
        }
    }

    /** Refuses a change that does not say which page it comes from. Browsers always say. */
    void checkOriginGiven(HttpExchange exchange) {
        if (all(exchange, "Origin").size() != 1) {
            throw new RefusedRequest(403, "Only Loftcoil's own page may change anything.");
        }
    }

    /** True where the browser has come through the opening address. */
    boolean knows(HttpExchange exchange) {
        return secret.isIn(all(exchange, "Cookie"));
    }

    private static List<String> all(HttpExchange exchange, String header) {
        Headers headers = exchange.getRequestHeaders();
        List<String> found = headers.get(header);
        return found == null ? List.of() : found;
    }
}
