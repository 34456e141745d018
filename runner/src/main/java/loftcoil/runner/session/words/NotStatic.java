package loftcoil.runner.session.words;

import java.util.Optional;

/** A method of an object called on its type. */
final class NotStatic implements PlainRule {

    @Override
    public Optional<String> say(Finding finding) {
        return finding.is("non-static.cant.be.ref")
                ? Optional.of(
                        "This belongs to one object, not to the type: name the object before the dot, such as design. instead of Design.")
                : Optional.empty();
    }
}
