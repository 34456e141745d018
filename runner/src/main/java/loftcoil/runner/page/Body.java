package loftcoil.runner.page;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.sun.net.httpserver.HttpExchange;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Map;
import loftcoil.engine.json.JsonFields;
import loftcoil.engine.json.JsonText;

/** What a request brings: a JSON object of limited size, of which the first fault refuses the request. */
final class Body {

    /** A learner's snippet is a few kilobytes. */
    static final int MOST_BYTES = 1 << 20;

    private static final JsonText TEXT = new JsonText(MOST_BYTES);

    private Body() {}

    static JsonFields none() {
        return JsonFields.atOnce(JsonNodeFactory.instance.objectNode());
    }

    static JsonFields read(HttpExchange exchange) throws IOException {
        String type = exchange.getRequestHeaders().getFirst("Content-Type");
        if (type == null || !type.toLowerCase(Locale.ROOT).matches("application/json(\\s*;\\s*charset=utf-8)?")) {
            throw new RefusedRequest(415, "Content-Type is " + type + ": only application/json is read here.");
        }
        byte[] bytes = exchange.getRequestBody().readNBytes(MOST_BYTES + 1);
        if (bytes.length > MOST_BYTES) {
            throw new RefusedRequest(
                    413,
                    "This is more than " + MOST_BYTES + " bytes, too much to take in one piece.",
                    Map.of("Connection", "close"));
        }
        return JsonFields.atOnce(TEXT.object("request", new String(bytes, StandardCharsets.UTF_8)));
    }
}
