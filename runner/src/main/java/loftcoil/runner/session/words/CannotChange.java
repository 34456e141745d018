package loftcoil.runner.session.words;

import java.util.Optional;

/** An assignment to what cannot be assigned. */
final class CannotChange implements PlainRule {

    @Override
    public Optional<String> say(Finding finding) {
        if (finding.is("cant.assign.val.to.var") || finding.is("cant.assign.val.to.final.var")) {
            return Optional.of("This value is final: it cannot be changed once it is set.");
        }
        if (finding.is("local.variables.referenced.from") || finding.is("cant.ref.non.effectively.final.var")) {
            return Optional.of("A variable that changes cannot be used inside ->. Copy it to a new variable first.");
        }
        return finding.is("unexpected.type")
                ? Optional.of("Only a variable can stand to the left of =.")
                : Optional.empty();
    }
}
