package loftcoil.runner.session.words;

import java.util.Optional;

/** A number that is written wrongly or is too large. */
final class NumberWritten implements PlainRule {

    @Override
    public Optional<String> say(Finding finding) {
        if (finding.is("int.number.too.large")) {
            return Optional.of(
                    "This whole number is too large for int. Write it with .0 at its end to make it a double.");
        }
        if (finding.is("malformed.fp.lit") || finding.is("illegal.underscore") || finding.is("invalid.hex.number")) {
            return Optional.of("This number is written wrongly. Numbers look like 12, 0.75 or 1.5e-6.");
        }
        return Optional.empty();
    }
}
