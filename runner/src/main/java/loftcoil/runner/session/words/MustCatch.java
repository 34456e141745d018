package loftcoil.runner.session.words;

import java.util.Optional;

/** An exception that must be dealt with. */
final class MustCatch implements PlainRule {

    @Override
    public Optional<String> say(Finding finding) {
        return finding.is("unreported.exception")
                ? Optional.of("This can fail with " + finding.inMessage("exception (\\w+)")
                        + ", and Java wants to know what then: put it in try { … } catch (Exception e) { … }.")
                : Optional.empty();
    }
}
