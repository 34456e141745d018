package loftcoil.runner.lesson;

import java.text.Normalizer;
import java.util.Arrays;
import java.util.Locale;

/** Small work on words: quoting for a message, names from headings. */
final class LessonNames {

    private static final int LONGEST_QUOTE = 60;

    private LessonNames() {}

    /** The text in quotation marks, on one line and not too long. */
    static String quoted(String text) {
        String line = text.replaceAll("\\p{Cntrl}+", " ").strip();
        return "“" + (line.length() > LONGEST_QUOTE ? line.substring(0, LONGEST_QUOTE) + "…" : line) + "”";
    }

    /** A name made of the first few words: lower case, digits and hyphens; empty where there is nothing to make it of. */
    static String slug(String text) {
        String plain = Normalizer.normalize(text, Normalizer.Form.NFD)
                .replaceAll("\\p{M}+", "")
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^a-z0-9]+", "-")
                .replaceAll("^-|-$", "");
        String[] words = plain.split("-", -1);
        return String.join("-", Arrays.copyOf(words, Math.min(words.length, 6)));
    }
}
