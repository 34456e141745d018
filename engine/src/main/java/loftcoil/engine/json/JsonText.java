package loftcoil.engine.json;

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
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.fault.PlainText;
import loftcoil.engine.fault.RefusedException;

/**
 * Reads a text as one JSON object. What is wrong is told in words for somebody who wrote a design or a lesson and not a
 * program; none of the parser's own get out.
 */
public final class JsonText {

    private static final int DEEPEST = 20;
    private static final int LONGEST_NUMBER = 100;
    private static final int LONGEST_NAME = 200;
    private static final String BYTE_ORDER_MARK = "\uFEFF";
    /** A digit where the name of the next field should stand. */
    private static final Pattern AFTER_A_COMMA = Pattern.compile("'\\d' \\(code \\d+\\)");

    private static final Pattern DUPLICATE = Pattern.compile("Duplicate field '(.*)'", Pattern.DOTALL);

    private final int longestText;
    private final JsonMapper mapper;

    /**
     * A reader of such texts.
     *
     * @param longestText most characters of one text in quotation marks
     */
    public JsonText(int longestText) {
        this.longestText = longestText;
        this.mapper = JsonMapper.builder(JsonFactory.builder()
                        .streamReadConstraints(StreamReadConstraints.builder()
                                .maxNestingDepth(DEEPEST)
                                .maxNumberLength(LONGEST_NUMBER)
                                .maxNameLength(LONGEST_NAME)
                                .maxStringLength(longestText)
                                .build())
                        .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                        .build())
                .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
                .build();
    }

    /**
     * The object written there.
     *
     * @param path what a fault calls the text, such as {@code design}; may be empty
     * @param json the text, with or without a byte-order mark
     * @throws RefusedException where it is none
     */
    public JsonNode object(String path, String json) {
        String text = json.startsWith(BYTE_ORDER_MARK) ? json.substring(BYTE_ORDER_MARK.length()) : json;
        if (text.isBlank()) {
            throw refused(path, "nothing", "the file is empty");
        }
        try {
            JsonNode root = mapper.readTree(text);
            if (!root.isObject()) {
                throw refused(path, "a JSON " + root.getNodeType().toString().toLowerCase(Locale.ROOT), "");
            }
            return root;
        } catch (MismatchedInputException trailing) {
            String given = "more than one JSON value" + placed(trailing);
            throw refused(path, given, "there is text after the end of the first");
        } catch (JsonProcessingException unreadable) {
            throw refused(path, "text that is not JSON" + placed(unreadable), plainly(unreadable));
        }
    }

    private static RefusedException refused(String path, String given, String why) {
        return new RefusedException(List.of(new Fault(path, given, "one JSON object in { }", why)));
    }

    private static String placed(JsonProcessingException fault) {
        return JsonPlace.of(fault).map(at -> " at " + at.words()).orElse("");
    }

    /** What is wrong, in words for somebody who wrote a design and not a program. */
    private String plainly(JsonProcessingException unreadable) {
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
        if (said.contains("code 8722")) {
            return "the minus of a number is a hyphen, -";
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
        if (said.contains("start field name") && AFTER_A_COMMA.matcher(said).find()) {
            return "a number has a decimal point and no comma, 19.5 and not 19,5";
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

    private String tooMuch(String said) {
        if (said.contains("nesting depth")) {
            return "objects and lists stand more than " + DEEPEST + " deep in one another";
        }
        if (said.contains("Number")) {
            return "a number has more than " + LONGEST_NUMBER + " digits";
        }
        if (said.contains("Name")) {
            return "the name of a field has more than " + LONGEST_NAME + " characters";
        }
        return "a text has more than " + longestText + " characters";
    }
}
