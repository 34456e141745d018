package loftcoil.runner.session.words;

import java.util.Optional;

/** A semicolon, bracket or name that should stand there. */
final class MissingMark implements PlainRule {

    @Override
    public Optional<String> say(Finding finding) {
        String wanted = finding.inMessage("^(.*) expected$");
        if (wanted.isEmpty()) {
            return Optional.empty();
        }
        if (wanted.equals("';'")) {
            return Optional.of("A semicolon ; is missing here: each statement ends with one.");
        }
        if (wanted.equals("<identifier>")) {
            return Optional.of("A name is missing here.");
        }
        if (wanted.equals("class, interface, enum, or record")) {
            return Optional.of("There is a closing brace } too many here, or the opening one is missing.");
        }
        String plain = wanted.replace("'", "").replace("<identifier>", "a name");
        return Optional.of("Here " + plain + " is missing.");
    }
}
