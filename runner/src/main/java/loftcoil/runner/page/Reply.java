package loftcoil.runner.page;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.sun.net.httpserver.Headers;
import com.sun.net.httpserver.HttpExchange;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;

/** An answer, sent with the same careful headers whatever it is. */
final class Reply {

    static final String JSON = "application/json; charset=utf-8";

    /** Nothing but our own files, and pictures written into the page as data. */
    private static final String CONTENT_POLICY = "default-src 'none'; script-src 'self'; style-src 'self'; "
            + "img-src 'self' data:; connect-src 'self'; font-src 'self'; frame-src 'self'; base-uri 'none'; form-action 'none'; "
            + "frame-ancestors 'none'";

    private static final Map<String, String> ALWAYS = Map.of(
            "Content-Security-Policy", CONTENT_POLICY,
            "X-Content-Type-Options", "nosniff",
            "X-Frame-Options", "DENY",
            "Referrer-Policy", "no-referrer",
            "Cross-Origin-Opener-Policy", "same-origin",
            "Cross-Origin-Resource-Policy", "same-origin",
            "Cache-Control", "no-store");

    private final int status;
    private final String type;
    private final byte[] bytes;
    private final Map<String, String> headers;

    /**
     * An answer.
     *
     * @param status HTTP status code
     * @param type media type
     * @param bytes the content; not copied, never changed
     * @param headers what only this answer says; takes precedence
     */
    Reply(int status, String type, byte[] bytes, Map<String, String> headers) {
        this.status = status;
        this.type = type;
        this.bytes = bytes;
        this.headers = headers;
    }

    static Reply refusal(RefusedRequest refused) {
        ObjectNode json = JsonNodeFactory.instance.objectNode().put("words", refused.words());
        if (!refused.said().isEmpty()) {
            ArrayNode said = json.putArray("said");
            refused.said().forEach(said::add);
        }
        return new Reply(refused.status(), JSON, json.toString().getBytes(StandardCharsets.UTF_8), refused.headers());
    }

    void send(HttpExchange exchange) throws IOException {
        Headers out = exchange.getResponseHeaders();
        ALWAYS.forEach(out::set);
        out.set("Content-Type", type);
        headers.forEach(out::set);
        // Never packed: it goes no further than this machine, and packing would take longer than sending.
        exchange.sendResponseHeaders(status, bytes.length == 0 ? -1 : bytes.length);
        if (bytes.length > 0) {
            exchange.getResponseBody().write(bytes);
        }
    }
}
