package loftcoil.engine.words;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * A sentence or two with measures in it: CommonMark without headings or lists. Whoever shows it writes the measures in the units
 * of the reader.
 *
 * @param code code of the sentence, several parted by spaces, by which tests and other programs know it; empty for text that has none
 * @param parts text and measures in reading order
 */
public record MeasuredText(String code, List<Part> parts) {

    /** Text or a measure. */
    public sealed interface Part permits Text, Measure {

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

    /** Keeps a copy of the parts. */
    public MeasuredText {
        parts = List.copyOf(parts);
    }

    /**
     * Puts words together.
     *
     * @param parts strings, measures, or other words, in reading order
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
                if (!words.code().isEmpty()) {
                    codes.add(words.code());
                }
            } else if (part instanceof String text) {
                all.add(new Text(text));
            } else {
                throw new IllegalArgumentException("neither text nor a measure: " + part);
            }
        }
        return new MeasuredText(String.join(" ", codes), all);
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
