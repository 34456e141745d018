package loftcoil.runner.session.words;

import java.util.Optional;

/** An operator between things it does not work on. */
final class WrongOperands implements PlainRule {

    @Override
    public Optional<String> say(Finding finding) {
        if (finding.is("operator.cant.be.applied.1")) {
            String operator = finding.inMessage("binary operator '(.+)'");
            String first = finding.inMessage("first type:\\s+(\\S+)");
            String second = finding.inMessage("second type:\\s+(\\S+)");
            return Optional.of(operator + " does not work between " + first + " and " + second + ".");
        }
        if (finding.is("operator.cant.be.applied")) {
            return Optional.of("This operator does not work on a " + finding.inMessage("type (\\S+)$") + ".");
        }
        if (finding.is("incomparable.types")) {
            return Optional.of("These two are of different types and can never be the same.");
        }
        return Optional.empty();
    }
}
