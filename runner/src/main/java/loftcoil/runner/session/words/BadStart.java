package loftcoil.runner.session.words;

import java.util.Optional;

/** Something that cannot begin an expression. */
final class BadStart implements PlainRule {

    @Override
    public Optional<String> say(Finding finding) {
        if (finding.is("illegal.start.of.expr")) {
            return Optional.of("A value is missing just before here, or a bracket or brace is left open before.");
        }
        if (finding.is("illegal.start.of.type") || finding.is("illegal.start.of.stmt")) {
            return Optional.of(
                    "A statement cannot begin like this. Look for a missing brace, bracket or semicolon before.");
        }
        if (finding.is("else.without.if")) {
            return Optional.of("This else has no if before it. Look for a stray semicolon or brace.");
        }
        if (finding.is("premature.eof")) {
            return Optional.of("The snippet ends too early: a closing brace } or bracket is missing.");
        }
        if (finding.is("orphaned")) {
            return Optional.of("This case stands outside any switch.");
        }
        return Optional.empty();
    }
}
