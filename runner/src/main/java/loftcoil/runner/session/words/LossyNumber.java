package loftcoil.runner.session.words;

import java.util.Optional;

/** A number with decimals put where only whole numbers fit. */
final class LossyNumber implements PlainRule {

    @Override
    public Optional<String> say(Finding finding) {
        String from = finding.inMessage("possible lossy conversion from (\\w+) to \\w+");
        String to = finding.inMessage("possible lossy conversion from \\w+ to (\\w+)");
        if (from.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of("A value of type " + from + " does not fit into " + to
                + " without losing part of it. Use " + from + " for the variable"
                + (to.equals("int") ? ", or (int) Math.round(…) where a whole number is meant." : "."));
    }
}
