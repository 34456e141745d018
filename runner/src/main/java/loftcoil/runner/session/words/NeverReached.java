package loftcoil.runner.session.words;

import java.util.Optional;

/** A statement after one that never lets it run. */
final class NeverReached implements PlainRule {

    @Override
    public Optional<String> say(Finding finding) {
        return finding.is("unreachable.stmt")
                ? Optional.of(
                        "This line can never run: what stands before it always returns, breaks or loops for ever.")
                : Optional.empty();
    }
}
