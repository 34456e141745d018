package loftcoil.runner.session;

import java.util.stream.Collectors;

/** Why an outcome is not a value, in sentences on one line. */
final class OutcomeWords {

    private OutcomeWords() {}

    static String of(Outcome outcome) {
        if (outcome instanceof Outcome.NotJava notJava) {
            return notJava.problems().stream()
                    .map(problem -> "Line " + problem.line() + ": " + problem.words())
                    .collect(Collectors.joining(" "));
        }
        if (outcome instanceof Outcome.Threw threw) {
            String where = threw.line() > 0 ? "Line " + threw.line() + ": " : "";
            if (threw.wantsTyping()) {
                return where + threw.message();
            }
            return where + threw.exception() + ", " + threw.message().replace('\n', ' ') + ".";
        }
        return outcome instanceof Outcome.Stopped stopped ? stopped(stopped) : "It has no value.";
    }

    private static String stopped(Outcome.Stopped stopped) {
        return switch (stopped.cause()) {
            case TIME -> "It ran longer than it may and was ended. Is there a loop that never ends?";
            case WAIT ->
                "It was not done after " + stopped.trace().millis() / 1000
                        + " s and was ended. Does it sleep, or wait for something that never comes?";
            case MEMORY -> "It asked for more memory than it may have and was ended.";
            case EXIT -> "It ended its own Java, which it should not do.";
            case OUTPUT -> "It printed far more than anyone can read and was ended.";
            case ASKED -> "It was ended, as you asked.";
        };
    }
}
