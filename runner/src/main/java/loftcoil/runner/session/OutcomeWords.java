package loftcoil.runner.session;

import java.util.Locale;
import java.util.stream.Collectors;

/** One line on why an outcome is not a value. */
final class OutcomeWords {

    private OutcomeWords() {}

    static String of(Outcome outcome) {
        if (outcome instanceof Outcome.NotJava notJava) {
            return notJava.problems().stream()
                    .map(problem -> problem.words() + " (" + problem.compiler().replace('\n', ' ') + ")")
                    .collect(Collectors.joining("; "));
        }
        if (outcome instanceof Outcome.Threw threw) {
            return threw.exception() + ": " + threw.message();
        }
        if (outcome instanceof Outcome.Stopped stopped) {
            return "stopped, " + stopped.cause().name().toLowerCase(Locale.ROOT);
        }
        return "no value";
    }
}
