package loftcoil.engine.design;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.core.io.JsonEOFException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.exc.MismatchedInputException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.fault.RefusedException;

/**
 * Reads and writes a design as JSON. Reading reports everything that is wrong in one go. Any object may carry a text
 * {@code notes}; any other field that is not of the design is refused, since it is most often a misspelt one.
 */
public final class DesignJson {

    private static final int DEEPEST = 20;
    private static final int LONGEST_NUMBER = 100;
    private static final int LONGEST_NAME = 200;
    private static final int LONGEST_TEXT = 20_000;
    private static final String BYTE_ORDER_MARK = "\uFEFF";
    private static final Pattern DUPLICATE = Pattern.compile("Duplicate field '(.*)'", Pattern.DOTALL);
    private static final JsonMapper MAPPER = JsonMapper.builder(JsonFactory.builder()
                    .streamReadConstraints(StreamReadConstraints.builder()
                            .maxNestingDepth(DEEPEST)
                            .maxNumberLength(LONGEST_NUMBER)
                            .maxNameLength(LONGEST_NAME)
                            .maxStringLength(LONGEST_TEXT)
                            .build())
                    .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                    .build())
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .build();

    private DesignJson() {}

    /**
     * Reads a design.
     *
     * @param json the text of the file, with or without a byte-order mark
     * @return a design in which nothing is wrong
     * @throws RefusedException with every fault found, each with the path of its field
     */
    public static Design read(String json) {
        JsonSection.Findings findings = new JsonSection.Findings();
        JsonSection in = JsonSection.root(
                tree(json.startsWith(BYTE_ORDER_MARK) ? json.substring(BYTE_ORDER_MARK.length()) : json), findings);
        Map<String, Origin> origins = Origins.read(in);
        Design design = DesignTable.TABLE.read(in).noted(findings.notes, origins);
        List<Fault> faults = new ArrayList<>(findings.faults);
        Set<String> told = faults.stream().map(Fault::path).collect(Collectors.toSet());
        // What was told to be missing or no number would be told again for the placeholder that stands in for it.
        DesignFaults.of(design).stream()
                .filter(fault -> told.stream().noneMatch(path -> isWithin(fault.path(), path)))
                .forEach(faults::add);
        if (!faults.isEmpty()) {
            throw new RefusedException(faults);
        }
        return design.noted(design.notes(), Origins.trimmed(design, origins));
    }

    /** The design as JSON, in the order of the record, absent parts left out. */
    public static String write(Design design) {
        ObjectNode out = DesignTable.TABLE.object("", design, design.notes());
        Origins.write(design, out);
        return out.toPrettyString() + "\n";
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
            String place =
                    JsonPlace.of(unreadable).map(at -> " at " + at.words()).orElse("");
            throw refused("text that is not JSON" + place, plainly(unreadable));
        }
    }

    /** What is wrong, in words for somebody who wrote a design and not a program. */
    private static String plainly(JsonProcessingException unreadable) {
        String said = unreadable.getOriginalMessage();
        if (unreadable instanceof StreamConstraintsException) {
            return tooMuch(said);
        }
        if (unreadable instanceof JsonEOFException) {
            return "the text ends before the last bracket or quotation mark is closed";
        }
        Matcher duplicate = DUPLICATE.matcher(said);
        if (duplicate.find()) {
            return "\"" + PlainText.cut(duplicate.group(1)) + "\" stands twice in one object";
        }
        if (said.contains("NON_NUMERIC") || said.contains("numeric value")) {
            return "a number is written with digits and a decimal point, with no zero before its first digit";
        }
        if (said.contains("control char") || said.contains("CTRL-CHAR")) {
            return "a text in quotation marks must not hold line ends or other control characters";
        }
        if (said.contains("escape")) {
            return "after a backslash in a text stands one of \" \\ / b f n r t u";
        }
        if (said.contains("double-quote to start field name") || said.contains("start field name")) {
            return "the name of a field stands in double quotation marks";
        }
        if (said.contains("colon")) {
            return "between a field and its value stands a colon";
        }
        if (said.contains("comma")) {
            return "between two fields or items stands a comma, and none after the last";
        }
        return "a value is wanted: a number, text in double quotation marks, true, false, a list or an object";
    }

    private static String tooMuch(String said) {
        if (said.contains("nesting depth")) {
            return "objects and lists stand more than " + DEEPEST + " deep in one another";
        }
        if (said.contains("Number")) {
            return "a number has more than " + LONGEST_NUMBER + " digits";
        }
        if (said.contains("Name")) {
            return "the name of a field has more than " + LONGEST_NAME + " characters";
        }
        return "a text has more than " + LONGEST_TEXT + " characters";
    }

    private static RefusedException refused(String given, String why) {
        return new RefusedException(List.of(new Fault("design", given, "one JSON object in { }", why)));
    }
}
