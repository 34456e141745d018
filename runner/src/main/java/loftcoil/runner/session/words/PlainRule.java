package loftcoil.runner.session.words;

import java.util.Optional;

/** Says one kind of mistake in plain words. */
interface PlainRule {

    /** The words, or empty where it is not this kind of mistake. */
    Optional<String> say(Finding finding);
}
