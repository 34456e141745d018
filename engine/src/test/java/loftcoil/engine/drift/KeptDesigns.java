package loftcoil.engine.drift;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.Map;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.DesignJson;
import loftcoil.engine.design.Example;
import loftcoil.engine.design.SafeBothy;

/** The designs whose whole output is kept. */
final class KeptDesigns {

    private static final ObjectMapper MAPPER = new ObjectMapper();

    private KeptDesigns() {}

    /** By name, the bothy first. */
    static Map<String, Design> all() {
        Map<String, Design> designs = new LinkedHashMap<>();
        try (InputStream in = KeptDesigns.class.getResourceAsStream("designs.json")) {
            JsonNode bothy = MAPPER.readTree(Example.orchardBothyJson());
            for (Map.Entry<String, JsonNode> patch : MAPPER.readTree(in).properties()) {
                if (patch.getValue().isObject()) {
                    JsonNode patched = patched(bothy, patch.getValue());
                    designs.put(patch.getKey(), DesignJson.read(patched.toString()));
                }
            }
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
        designs.put("all-said", SafeBothy.design());
        return designs;
    }

    /** A merge patch as in RFC 7386: objects are merged, null takes out, anything else replaces. */
    private static JsonNode patched(JsonNode target, JsonNode patch) {
        if (!patch.isObject()) {
            return patch;
        }
        ObjectNode merged = target instanceof ObjectNode object ? object.deepCopy() : MAPPER.createObjectNode();
        patch.properties().forEach(field -> {
            if (field.getValue().isNull()) {
                merged.remove(field.getKey());
            } else {
                merged.set(field.getKey(), patched(merged.path(field.getKey()), field.getValue()));
            }
        });
        return merged;
    }
}
