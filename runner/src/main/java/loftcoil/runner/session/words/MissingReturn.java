package loftcoil.runner.session.words;

import java.util.Optional;

/** A method that can end without its value. */
final class MissingReturn implements PlainRule {

    @Override
    public Optional<String> say(Finding finding) {
        boolean found = finding.is("missing.ret.stmt")
                || (finding.is("prob.found.req") && finding.message().contains("missing return value"));
        return found
                ? Optional.of(
                        "This method promises a value, but can end without a return. Write return …; on every way to its end.")
                : Optional.empty();
    }
}
