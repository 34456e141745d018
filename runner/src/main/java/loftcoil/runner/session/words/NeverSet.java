package loftcoil.runner.session.words;

import java.util.Optional;

/** A variable read before it has a value. */
final class NeverSet implements PlainRule {

    @Override
    public Optional<String> say(Finding finding) {
        if (!finding.is("var.might.not.have.been.initialized")) {
            return Optional.empty();
        }
        String name = finding.inMessage("variable (\\w+) might not");
        return Optional.of(
                name + " may have no value yet here. Give it one where it is declared, such as " + name + " = 0;");
    }
}
