package loftcoil.runner.session.words;

import java.util.Optional;

/** A method given the wrong number or kinds of values. */
final class WrongArguments implements PlainRule {

    @Override
    public Optional<String> say(Finding finding) {
        if (finding.is("cant.apply.symbols")) {
            String name = finding.inMessage("no suitable (?:method|constructor) found for (\\w+)");
            return Optional.of(name + " does not take what is given here. Look at what stands between its brackets.");
        }
        if (!finding.is("cant.apply.symbol")) {
            return Optional.empty();
        }
        String name = finding.inMessage("(?:method|constructor) (\\w+) in ");
        String required = finding.inMessage("required:\\s+(.+)");
        String found = finding.inMessage("found:\\s+(.+)");
        return Optional.of(name + " takes (" + none(required) + "), but is given (" + none(found) + ").");
    }

    private static String none(String types) {
        return types.startsWith("no arguments") ? "nothing" : types.strip();
    }
}
