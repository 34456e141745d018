package loftcoil.engine.design;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.exc.MismatchedInputException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.fault.RefusedException;

/**
 * Reads and writes a design as JSON. Reading reports everything that is wrong in one go. Any object may carry a text
 * {@code notes}; any other field that is not of the design is refused, since it is most often a misspelt one.
 */
public final class DesignJson {

    private static final int DEEPEST = 20;

    private static final JsonMapper MAPPER = JsonMapper.builder(JsonFactory.builder()
                    .streamReadConstraints(StreamReadConstraints.builder()
                            .maxNestingDepth(DEEPEST)
                            .maxNumberLength(100)
                            .maxNameLength(200)
                            .maxStringLength(20_000)
                            .build())
                    .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                    .build())
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .build();

    private DesignJson() {}

    /**
     * Reads a design.
     *
     * @param json the text of the file
     * @return a design in which nothing is wrong
     * @throws RefusedException with every fault found, each with the path of its field
     */
    public static Design read(String json) {
        JsonSection.Findings findings = new JsonSection.Findings();
        Design design = DesignReader.read(tree(json), findings);
        List<Fault> faults = new ArrayList<>(findings.faults);
        Set<String> told = faults.stream().map(Fault::path).collect(Collectors.toSet());
        // What was told to be missing or no number would be told again for the placeholder that stands in for it.
        DesignFaults.of(design).stream()
                .filter(fault -> told.stream().noneMatch(path -> isWithin(fault.path(), path)))
                .forEach(faults::add);
        if (!faults.isEmpty()) {
            throw new RefusedException(faults);
        }
        return design;
    }

    /** The design as JSON, in the order of the record, absent parts left out. */
    public static String write(Design design) {
        return DesignWriter.write(design).toPrettyString() + "\n";
    }

    private static boolean isWithin(String path, String told) {
        return path.equals(told) || path.startsWith(told + ".") || path.startsWith(told + "[");
    }

    private static JsonNode tree(String json) {
        if (json.isBlank()) {
            throw refused("nothing", "the file is empty");
        }
        try {
            JsonNode root = MAPPER.readTree(json);
            if (!root.isObject()) {
                throw refused("a JSON " + root.getNodeType().toString().toLowerCase(Locale.ROOT), "");
            }
            return root;
        } catch (MismatchedInputException trailing) {
            throw refused("more than one JSON value", "there is text after the end of the first");
        } catch (JsonProcessingException unreadable) {
            JsonLocation at = unreadable.getLocation();
            String place = at == null ? "" : " at line " + at.getLineNr() + ", column " + at.getColumnNr();
            String why = unreadable.getOriginalMessage().lines().findFirst().orElse("");
            throw refused("text that is not JSON" + place, why);
        }
    }

    private static RefusedException refused(String given, String why) {
        return new RefusedException(List.of(new Fault("design", given, "one JSON object in { }", why)));
    }
}
