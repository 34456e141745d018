package loftcoil.runner.terminal;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import loftcoil.runner.show.View;

/** The glossary, or what of it was asked for, as lines. */
final class TermsText {

    private TermsText() {}

    /**
     * Terms with what they mean.
     *
     * @param words the glossary
     * @param sought a term or a part of one; blank for all
     * @param width greatest line length, in characters
     */
    static List<String> lines(View.Words words, String sought, int width) {
        String part = sought.strip().toLowerCase(Locale.ROOT);
        List<String> found = words.terms().stream()
                .filter(term -> term.name().toLowerCase(Locale.ROOT).contains(part))
                .flatMap(term -> lines(term, width))
                .toList();
        if (!found.isEmpty()) {
            return found;
        }
        return Wrap.lines(
                words.terms().isEmpty()
                        ? "This course has no glossary."
                        : "No term has “" + sought.strip() + "” in it; t and Enter lists all.",
                width);
    }

    private static Stream<String> lines(View.Term term, int width) {
        String first = term.lessonTitle().isEmpty() ? "" : " (first in: " + term.lessonTitle() + ")";
        return PlainText.of("**" + term.name() + "**: " + term.markdown() + first, width)
                .lines();
    }
}
