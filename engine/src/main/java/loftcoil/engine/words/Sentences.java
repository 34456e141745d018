package loftcoil.engine.words;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The sentences of a room, by code, from a {@code .properties} file beside one of its classes. A sentence is CommonMark without
 * headings or lists. It may have holes: {@code {where}} takes text, {@code {margin:TEMP_DIFF_K}} a measure of that
 * {@link MeasureKind}, {@code {margin:TEMP_DIFF_K+1}} one that is written with a decimal place more than its kind has.
 */
public final class Sentences {

    private static final Pattern HOLE = Pattern.compile("\\{(\\w+)(?::([A-Z_0-9]+?)(?:\\+(\\d))?)?}");

    private final String name;
    private final Map<String, String> byCode;

    private Sentences(String name, Map<String, String> byCode) {
        this.name = name;
        this.byCode = Map.copyOf(byCode);
    }

    /**
     * Reads the sentences that stand beside a class.
     *
     * @param beside any class of the room
     * @param name file name of the resource
     * @throws IllegalStateException where it is missing, a fault of the build and never of a user
     */
    public static Sentences read(Class<?> beside, String name) {
        Properties read = new Properties();
        try (InputStream in = beside.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException(name + " is missing beside " + beside.getName());
            }
            read.load(new InputStreamReader(in, StandardCharsets.UTF_8));
        } catch (IOException unreadable) {
            throw new UncheckedIOException(name, unreadable);
        }
        Map<String, String> byCode = new HashMap<>();
        read.stringPropertyNames().forEach(code -> byCode.put(code, read.getProperty(code)));
        return new Sentences(name, byCode);
    }

    /** Every code there is, sorted. */
    public Set<String> codes() {
        return new TreeSet<>(byCode.keySet());
    }

    /**
     * A sentence with its holes filled.
     *
     * @param code code of the sentence
     * @param filling name of a hole, what fills it, name, what, and so on; a {@link Measure} for a typed hole, a string or other
     *     {@link MeasuredText} for one that takes text
     * @throws IllegalStateException where there is no such sentence, a hole is left open, a name fills none, or a measure is of
     *     another kind: a fault of the program, never of a user
     */
    public MeasuredText say(String code, Object... filling) {
        String sentence = byCode.get(code);
        if (sentence == null) {
            throw new IllegalStateException(name + " has no sentence " + code);
        }
        Map<String, Object> fillings = new HashMap<>();
        for (int i = 0; i < filling.length; i += 2) {
            fillings.put((String) filling[i], filling[i + 1]);
        }
        return new MeasuredText(code, filled(code, sentence, fillings));
    }

    private List<MeasuredText.Part> filled(String code, String sentence, Map<String, Object> fillings) {
        List<MeasuredText.Part> parts = new ArrayList<>();
        Set<String> unused = new HashSet<>(fillings.keySet());
        Matcher hole = HOLE.matcher(sentence);
        int from = 0;
        while (hole.find()) {
            text(parts, sentence.substring(from, hole.start()));
            Object value = fillings.get(hole.group(1));
            if (value == null) {
                throw new IllegalStateException(name + ", " + code + ": nothing fills " + hole.group());
            }
            fill(parts, code, hole, value);
            unused.remove(hole.group(1));
            from = hole.end();
        }
        text(parts, sentence.substring(from));
        if (!unused.isEmpty()) {
            throw new IllegalStateException(name + ", " + code + ": no hole for " + unused);
        }
        return parts;
    }

    private void fill(List<MeasuredText.Part> parts, String code, Matcher hole, Object value) {
        String kind = hole.group(2);
        if (value instanceof Measure measure && measure.kind().name().equals(kind)) {
            parts.add(hole.group(3) == null ? measure : measure.finer(Integer.parseInt(hole.group(3))));
        } else if (kind == null && value instanceof String text) {
            text(parts, text);
        } else if (kind == null && value instanceof MeasuredText text) {
            parts.addAll(text.parts());
        } else {
            throw new IllegalStateException(name + ", " + code + ": " + value + " does not fit " + hole.group());
        }
    }

    private static void text(List<MeasuredText.Part> parts, String text) {
        if (!text.isEmpty()) {
            parts.add(new MeasuredText.Text(text));
        }
    }
}
