package loftcoil.runner.exercise;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import loftcoil.engine.design.Changes;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.DesignJson;
import loftcoil.engine.design.Example;

/**
 * A system with a fault, told as what differs from the course's example once that is sound: the example itself has dangers, which
 * the lessons clear, and what is left when the fault is mended must have none.
 *
 * @param patch a merge patch on the JSON of {@link #sound()} (IETF RFC 7396); an empty object for none
 * @param changes value by named change, made after it and in this order
 */
public record FaultySystem(String patch, Map<String, String> changes) {

    private static final ObjectMapper MAPPER = new ObjectMapper();

    /** What clears the dangers of the example and leaves its loop as it is. */
    private static final Map<String, String> MADE_SOUND = Map.of(
            "taps.mixer", "set to 45 °C",
            "coil.turns", "bent from one length",
            "tank.volumeL", "200",
            "window.panes", "2",
            "fire.litForH", "2");

    /** Keeps its own copy, in the same order. */
    public FaultySystem {
        changes = Collections.unmodifiableMap(new LinkedHashMap<>(changes));
    }

    /** The course's example with a larger tank, a shorter fire, two panes, a coil bent from one length, and mixing valves. */
    public static Design sound() {
        Design design = Example.orchardBothy();
        for (Map.Entry<String, String> change : MADE_SOUND.entrySet()) {
            design = Changes.apply(design, change.getKey(), change.getValue());
        }
        return design;
    }

    /**
     * The system as a design.
     *
     * @throws loftcoil.engine.fault.RefusedException where it cannot be computed at all
     */
    public Design design() {
        Design design = DesignJson.read(patched());
        for (Map.Entry<String, String> change : changes.entrySet()) {
            design = Changes.apply(design, change.getKey(), change.getValue());
        }
        return design;
    }

    private String patched() {
        try {
            JsonNode example = MAPPER.readTree(DesignJson.write(sound()));
            return merged(example, MAPPER.readTree(patch)).toString();
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("both were read as JSON before", e);
        }
    }

    /** RFC 7396, section 2. */
    private static JsonNode merged(JsonNode target, JsonNode patch) {
        if (!(patch instanceof ObjectNode changes)) {
            return patch;
        }
        ObjectNode result =
                target instanceof ObjectNode object ? object.deepCopy() : JsonNodeFactory.instance.objectNode();
        for (Map.Entry<String, JsonNode> change : changes.properties()) {
            if (change.getValue().isNull()) {
                result.remove(change.getKey());
            } else {
                result.set(change.getKey(), merged(result.path(change.getKey()), change.getValue()));
            }
        }
        return result;
    }
}
