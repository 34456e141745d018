package loftcoil.runner.session.words;

import java.util.Optional;

/** A name declared twice in one place. */
final class AlreadyThere implements PlainRule {

    @Override
    public Optional<String> say(Finding finding) {
        if (!finding.is("already.defined")) {
            return Optional.empty();
        }
        String name = finding.inMessage("(?:variable|method|class) (\\S+) is already");
        return Optional.of(name
                + " is declared already in the same place. Leave its type away to change it, or choose another name.");
    }
}
