package loftcoil.runner.session.words;

import java.util.Optional;

/** A character that is no part of Java, as word processors put in. */
final class StrangeCharacter implements PlainRule {

    @Override
    public Optional<String> say(Finding finding) {
        if (!finding.is("illegal.char")) {
            return Optional.empty();
        }
        String character = finding.inMessage("illegal character: .(.+).$");
        return Optional.of(
                "The character " + character
                        + " is not part of Java. Text copied from a page often has curly quotes, long dashes or ×: use \", - and *.");
    }
}
