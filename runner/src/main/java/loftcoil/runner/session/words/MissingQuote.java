package loftcoil.runner.session.words;

import java.util.Optional;

/** A text without its end. */
final class MissingQuote implements PlainRule {

    @Override
    public Optional<String> say(Finding finding) {
        if (finding.is("unclosed.str.lit")) {
            return Optional.of("This text has no closing quote \". A text starts and ends with \" on the same line.");
        }
        if (finding.is("unclosed.char.lit") || finding.is("empty.char.lit")) {
            return Optional.of("Text stands between double quotes \"…\"; single quotes hold one letter only.");
        }
        if (finding.is("unclosed.comment")) {
            return Optional.of("This comment has no end: write */ after it.");
        }
        return Optional.empty();
    }
}
