package loftcoil.engine.words;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A sentence or two with measures in it: CommonMark without headings or lists. Whoever shows it writes the measures in the units
 * of the reader.
 *
 * @param code code of the sentence, several parted by spaces, by which tests and other programs know it; empty for text that has none
 * @param parts text, names and measures in reading order
 */
public record MeasuredText(String code, List<Part> parts) {

    /** Text, a name or a measure. */
    public sealed interface Part permits Text, Name, Measure {

        /** The part in metric units. */
        String metric();
    }

    /**
     * Plain text.
     *
     * @param text CommonMark, inline only
     */
    public record Text(String text) implements Part {

        @Override
        public String metric() {
            return text;
        }
    }

    /**
     * What something is called, such as a leg or a tap of the design.
     *
     * @param name the name as somebody wrote it: no CommonMark, so that a star in it is a star
     */
    public record Name(String name) implements Part {

        @Override
        public String metric() {
            return name;
        }
    }

    /** Keeps a copy of the parts. */
    public MeasuredText {
        parts = List.copyOf(parts);
    }

    /**
     * Puts words together.
     *
     * @param parts strings, names, measures, or other words, in reading order
     * @throws IllegalArgumentException where a part is something else
     */
    public static MeasuredText of(Object... parts) {
        List<Part> all = new ArrayList<>();
        List<String> codes = new ArrayList<>();
        for (Object part : parts) {
            if (part instanceof Part ready) {
                all.add(ready);
            } else if (part instanceof MeasuredText words) {
                all.addAll(words.parts());
                codes.add(words.code());
            } else if (part instanceof String text) {
                all.add(new Text(text));
            } else {
                throw new IllegalArgumentException("neither text nor a measure: " + part);
            }
        }
        return new MeasuredText(codes(codes.stream()), all);
    }

    /** Several codes as one, those of text without a code left out. */
    static String codes(Stream<String> codes) {
        return codes.filter(code -> !code.isEmpty()).collect(Collectors.joining(" "));
    }

    /** The words in metric units. */
    public String metric() {
        return parts.stream().map(Part::metric).collect(Collectors.joining());
    }

    /** The words in metric units without the marks of CommonMark. */
    @Override
    public String toString() {
        return metric().replace("**", "");
    }
}
