package loftcoil.runner.session.words;

import java.util.Optional;

/** One equals sign where two are meant. */
final class SingleEquals implements PlainRule {

    @Override
    public Optional<String> say(Finding finding) {
        String wanted = finding.inMessage("(\\w+) cannot be converted to boolean");
        boolean condition = finding.line().matches(".*\\b(if|while)\\s*\\(.*[^=<>!]=[^=].*");
        if (condition && (!wanted.isEmpty() || finding.is("unexpected.type"))) {
            return Optional.of("= gives a value; to ask whether two values are the same, write ==.");
        }
        return Optional.empty();
    }
}
