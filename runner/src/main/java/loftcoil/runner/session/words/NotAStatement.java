package loftcoil.runner.session.words;

import java.util.Optional;

/** An expression whose value goes nowhere. */
final class NotAStatement implements PlainRule {

    @Override
    public Optional<String> say(Finding finding) {
        if (!finding.is("not.stmt")) {
            return Optional.empty();
        }
        return Optional.of(
                "This line does nothing with its value. Give it to a variable, print it, or check for a missing = or ( ) before.");
    }
}
