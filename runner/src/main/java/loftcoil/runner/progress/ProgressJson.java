package loftcoil.runner.progress;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.exc.UnrecognizedPropertyException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import loftcoil.engine.json.JsonPlace;

/** Progress as JSON, and back. Strict, because what is not understood would be lost with the next step. */
final class ProgressJson {

    private static final JsonMapper MAPPER = JsonMapper.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .disable(DeserializationFeature.ACCEPT_FLOAT_AS_INT)
            .enable(DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES)
            .enable(DeserializationFeature.FAIL_ON_MISSING_CREATOR_PROPERTIES)
            .enable(DeserializationFeature.FAIL_ON_NULL_CREATOR_PROPERTIES)
            .enable(SerializationFeature.ORDER_MAP_ENTRIES_BY_KEYS)
            .enable(SerializationFeature.INDENT_OUTPUT)
            .build();

    private ProgressJson() {}

    /** Thrown where a file holds no progress this edition can read. */
    static final class UnreadableException extends Exception {
        private static final long serialVersionUID = 1L;
        private final boolean newer;

        UnreadableException(String words, boolean newer) {
            super(words);
            this.newer = newer;
        }

        boolean newer() {
            return newer;
        }
    }

    /** A tree of an earlier edition as this one writes it. */
    private static JsonNode brought(JsonNode tree, int version) {
        if (version == Progress.VERSION || !(tree instanceof ObjectNode older)) {
            return tree;
        }
        older.put("version", Progress.VERSION);
        if (version == 1 && !older.has("refresher")) {
            older.putObject("refresher");
        }
        if (!older.has("units")) {
            older.put("units", "");
        }
        for (JsonNode lesson : older.path("lessons")) {
            for (JsonNode answers : lesson.path("answers")) {
                answers.forEach(ProgressJson::withoutWords);
            }
        }
        OlderLessons.bring(older);
        return older;
    }

    private static void withoutWords(JsonNode answer) {
        if (answer instanceof ObjectNode given && !given.has("words") && !given.has("hint")) {
            given.put("words", "").put("hint", "");
        }
    }

    static byte[] write(Progress progress) {
        try {
            return (MAPPER.writeValueAsString(progress) + "\n").getBytes(StandardCharsets.UTF_8);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("records of text and numbers can always be written", e);
        }
    }

    static Progress read(String json) throws UnreadableException {
        try {
            JsonNode tree = MAPPER.readTree(json);
            JsonNode version = tree == null ? null : tree.get("version");
            if (version == null || !version.isInt() || version.intValue() < 1) {
                throw new UnreadableException("it has no version", false);
            }
            if (version.intValue() > Progress.VERSION) {
                throw new UnreadableException("a newer Loftcoil wrote it", true);
            }
            return MAPPER.treeToValue(brought(tree, version.intValue()), Progress.class);
        } catch (UnrecognizedPropertyException e) {
            throw new UnreadableException("it holds \"" + e.getPropertyName() + "\", which is not known here", false);
        } catch (JsonProcessingException e) {
            // The place helps a person who mends it by hand; the parser's own words would only be in the way.
            String place = JsonPlace.of(e).map(at -> " at " + at.words()).orElse("");
            throw new UnreadableException("it cannot be read" + place, false);
        }
    }
}
