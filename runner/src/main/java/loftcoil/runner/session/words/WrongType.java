package loftcoil.runner.session.words;

import java.util.Optional;

/** A value of one type where another is wanted. */
final class WrongType implements PlainRule {

    @Override
    public Optional<String> say(Finding finding) {
        String from = finding.inMessage("incompatible types: (.+) cannot be converted to .+");
        String to = finding.inMessage("incompatible types: .+ cannot be converted to (.+)");
        if (!from.isEmpty()) {
            return Optional.of("This is of type " + from + ", but " + to + " is wanted here.");
        }
        if (finding.message().contains("unexpected return value")) {
            return Optional.of(
                    "This method is declared void, so it cannot return a value. Put its type in place of void.");
        }
        if (finding.is("illegal.initializer.for.type")) {
            return Optional.of("Values in braces { } make an array; this variable is not one. Add [] to its type.");
        }
        if (finding.is("cant.deref")) {
            return Optional.of("A plain number has no methods: nothing can follow a dot after it.");
        }
        if (finding.is("array.req.but.found")) {
            return Optional.of("Square brackets [ ] pick from an array, and this is not an array.");
        }
        return Optional.empty();
    }
}
