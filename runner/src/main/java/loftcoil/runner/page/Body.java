package loftcoil.runner.page;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.MissingNode;
import com.sun.net.httpserver.HttpExchange;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import loftcoil.engine.design.JsonText;

/** What a request brings: a JSON object of limited size, its fields read with care. */
final class Body {

    /** A learner's snippet is a few kilobytes. */
    static final int MOST_BYTES = 1 << 20;

    private static final JsonText TEXT = new JsonText(MOST_BYTES);

    private Body() {}

    static JsonNode none() {
        return MissingNode.getInstance();
    }

    static JsonNode read(HttpExchange exchange) throws IOException {
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
        try {
            return TEXT.object(new String(bytes, StandardCharsets.UTF_8));
        } catch (JsonText.UnreadableException broken) {
            throw new RefusedRequest(400, "The request must be a JSON object, not " + broken.getMessage() + ".");
        }
    }

    static String text(JsonNode body, String field) {
        JsonNode value = body.path(field);
        if (!value.isTextual()) {
            throw new RefusedRequest(400, field + ": a text is needed here.");
        }
        return value.textValue();
    }

    static int offset(JsonNode body, String field, int most) {
        JsonNode value = body.path(field);
        if (!value.isInt() || !(value.intValue() >= 0 && value.intValue() <= most)) {
            throw new RefusedRequest(400, field + " is " + value + ": allowed are 0 to " + most + ".");
        }
        return value.intValue();
    }

    static boolean flag(JsonNode body, String field) {
        JsonNode value = body.path(field);
        if (!value.isBoolean()) {
            throw new RefusedRequest(400, field + ": true or false is needed here.");
        }
        return value.booleanValue();
    }

    static Map<String, String> texts(JsonNode body, String field) {
        JsonNode value = body.path(field);
        if (!value.isObject()) {
            throw new RefusedRequest(400, field + ": names with texts are needed here.");
        }
        Map<String, String> texts = new LinkedHashMap<>();
        for (String name : (Iterable<String>) value::fieldNames) {
            texts.put(name, text(value, name));
        }
        return texts;
    }

    static Map<String, Double> numbers(JsonNode body, String field) {
        JsonNode value = body.path(field);
        if (!value.isObject()) {
            throw new RefusedRequest(400, field + ": names with numbers are needed here.");
        }
        Map<String, Double> numbers = new LinkedHashMap<>();
        for (Map.Entry<String, JsonNode> entry : value.properties()) {
            if (!entry.getValue().isNumber()
                    || !Double.isFinite(entry.getValue().doubleValue())) {
                throw new RefusedRequest(400, field + "." + entry.getKey() + ": a number is needed here.");
            }
            numbers.put(entry.getKey(), entry.getValue().doubleValue());
        }
        return numbers;
    }
}
