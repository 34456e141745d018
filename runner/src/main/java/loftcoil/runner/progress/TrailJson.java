package loftcoil.runner.progress;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** A trail as JSON, and back; each state stands in it as the object that the design's own file is. */
final class TrailJson {

    private static final JsonMapper MAPPER = JsonMapper.builder().build();
    private static final int VERSION = 1;

    private TrailJson() {}

    static byte[] write(Trail trail) {
        ObjectNode out = MAPPER.createObjectNode();
        out.put("version", VERSION);
        out.put("folded", trail.folded());
        ArrayNode entries = out.putArray("entries");
        for (Trail.Entry entry : trail.entries()) {
            ObjectNode one = entries.addObject();
            one.put("at", entry.at());
            one.put("how", entry.how().name().toLowerCase(Locale.ROOT));
            one.set("state", tree(entry.state()));
        }
        return (out + "\n").getBytes(StandardCharsets.UTF_8);
    }

    /** Empty where it is no trail, or one of a later edition. */
    static Optional<Trail> read(String json) {
        try {
            JsonNode in = MAPPER.readTree(json);
            List<Trail.Entry> entries = new ArrayList<>();
            for (JsonNode one : in.path("entries")) {
                entries.add(new Trail.Entry(
                        one.path("at").asText(),
                        Trail.How.valueOf(one.path("how").asText().toUpperCase(Locale.ROOT)),
                        one.path("state").toPrettyString() + "\n"));
            }
            boolean ours = in.path("version").asInt() == VERSION && !entries.isEmpty();
            return ours ? Optional.of(new Trail(in.path("folded").asInt(), entries)) : Optional.empty();
        } catch (JsonProcessingException | IllegalArgumentException noTrail) {
            return Optional.empty();
        }
    }

    private static JsonNode tree(String state) {
        try {
            return MAPPER.readTree(state);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a state is a design that was written as JSON", e);
        }
    }
}
