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
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The sentences of a room, by code, from a {@code .properties} file in UTF-8 beside one of its classes. A sentence is CommonMark
 * without headings or lists. It may have holes:
 *
 * <table>
 * <caption>Holes of a sentence</caption>
 * <tr><td>{@code {where}}</td><td>a name, or other words</td></tr>
 * <tr><td>{@code {margin:TEMP_DIFF_K}}</td><td>a measure of that {@link MeasureKind}</td></tr>
 * <tr><td>{@code {margin:TEMP_DIFF_K+1}}</td><td>one that is written with a decimal place more than its kind has</td></tr>
 * <tr><td>{@code {full:MASS_KG-1}}</td><td>one that is written with a decimal place less</td></tr>
 * <tr><td>{@code {60:TEMP_C}}</td><td>no hole but a number that stands fast, to be written in the units of the reader</td></tr>
 * <tr><td>{@code between {25:TEMP_C bare} and {45:TEMP_C}}</td><td>one whose unit follows with the next</td></tr>
 * </table>
 *
 * <p>Sentences that belong together have codes that differ after the last full stop: {@code wrong.knocks.seen} and
 * {@code wrong.knocks.act}.
 */
public final class Sentences {

    private final String name;
    private final Map<String, Sentence> byCode;

    private Sentences(String name, Map<String, Sentence> byCode) {
        this.name = name;
        this.byCode = Map.copyOf(byCode);
    }

    /**
     * Reads the sentences that stand beside a class.
     *
     * @param beside any class of the room
     * @param name file name of the resource
     * @throws IllegalStateException where it is missing, a code stands twice or a hole is misspelt: a fault of the build and never
     *     of a user
     */
    public static Sentences read(Class<?> beside, String name) {
        Map<String, Sentence> byCode = new HashMap<>();
        Properties read = new OncePerCode(name);
        try (InputStream in = beside.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException(name + " is missing beside " + beside.getName());
            }
            read.load(new InputStreamReader(in, StandardCharsets.UTF_8));
        } catch (IOException unreadable) {
            throw new UncheckedIOException(name, unreadable);
        }
        read.stringPropertyNames()
                .forEach(code -> byCode.put(code, Sentence.read(name + ", " + code, read.getProperty(code))));
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
     * @param filling name of a hole, what fills it, name, what, and so on; a {@link Measure} for a typed hole, a string (taken as a
     *     name) or other {@link MeasuredText} for one that takes text
     * @throws IllegalStateException where there is no such sentence, a hole is left open, a name fills none, or a measure is of
     *     another kind: a fault of the program, never of a user
     */
    public MeasuredText say(String code, Object... filling) {
        Set<String> unused = new HashSet<>();
        MeasuredText said = say(code, fillings(filling), unused);
        refuse(code, unused);
        return said;
    }

    /**
     * Sentences that belong together, each with those of the fillings that it has holes for.
     *
     * @param code what their codes have in common, without the last full stop
     * @param ends what comes after it, in the order wanted
     * @param filling as for {@link #say}
     * @throws IllegalStateException as for {@link #say}; a name has to fill a hole of one of them
     */
    public List<MeasuredText> sayEach(String code, List<String> ends, Object... filling) {
        Map<String, Object> fillings = fillings(filling);
        Set<String> unused = new HashSet<>(fillings.keySet());
        List<MeasuredText> said = new ArrayList<>();
        for (String end : ends) {
            Set<String> here = new HashSet<>();
            said.add(say(code + "." + end, fillings, here));
            unused.retainAll(here);
        }
        refuse(code, unused);
        return said;
    }

    private MeasuredText say(String code, Map<String, Object> fillings, Set<String> unused) {
        Sentence sentence = byCode.get(code);
        if (sentence == null) {
            throw new IllegalStateException(name + " has no sentence " + code);
        }
        unused.addAll(fillings.keySet());
        List<MeasuredText.Part> parts = new ArrayList<>();
        List<String> inner = new ArrayList<>();
        for (Sentence.Piece piece : sentence.pieces()) {
            if (piece instanceof Sentence.Ready ready) {
                parts.add(ready.part());
            } else if (piece instanceof Sentence.Hole hole) {
                fill(parts, inner, code, hole, fillings.get(hole.name()));
                unused.remove(hole.name());
            }
        }
        return new MeasuredText(MeasuredText.codes(Stream.concat(Stream.of(code), inner.stream())), parts);
    }

    private void fill(
            List<MeasuredText.Part> parts,
            List<String> inner,
            String code,
            Sentence.Hole hole,
            @Nullable Object value) {
        if (value instanceof Measure measure
                && hole.kind().filter(measure.kind()::equals).isPresent()) {
            parts.add(hole.written(measure));
        } else if (hole.kind().isEmpty() && value instanceof String named) {
            parts.add(new MeasuredText.Name(named));
        } else if (hole.kind().isEmpty() && value instanceof MeasuredText text) {
            parts.addAll(text.parts());
            inner.add(text.code());
        } else {
            throw new IllegalStateException(name + ", " + code + ": " + value + " does not fit {" + hole.name() + "}");
        }
    }

    private void refuse(String code, Set<String> unused) {
        if (!unused.isEmpty()) {
            throw new IllegalStateException(name + ", " + code + ": no hole for " + unused);
        }
    }

    private Map<String, Object> fillings(Object... filling) {
        Map<String, Object> fillings = new HashMap<>();
        for (int i = 0; i < filling.length; i += 2) {
            fillings.put((String) filling[i], filling[i + 1]);
        }
        return fillings;
    }

    /** A resource in which no code stands twice. */
    private static final class OncePerCode extends Properties {

        private static final long serialVersionUID = 1;

        private final String file;

        OncePerCode(String file) {
            this.file = file;
        }

        @Override
        public synchronized Object put(Object code, Object sentence) {
            if (containsKey(code)) {
                throw new IllegalStateException(file + ": " + code + " stands twice");
            }
            return super.put(code, sentence);
        }
    }
}
