package loftcoil.runner.session;

import java.util.List;
import loftcoil.runner.chart.ChartOrder;

/** What came of running one snippet. */
public sealed interface Outcome {

    /** What happened on the way, whatever the end was. */
    Trace trace();

    /**
     * What a snippet left behind.
     *
     * @param printed what it printed, in order, standard output and error together; cut at the session's limit
     * @param printedMissing how many characters more it printed than are kept
     * @param charts charts it showed, in order
     * @param chartsMissing how many charts more it showed than are kept
     * @param millis wall-clock time it took
     */
    record Trace(String printed, long printedMissing, List<ChartOrder> charts, int chartsMissing, long millis) {

        /** Keeps its own copies. */
        public Trace {
            charts = List.copyOf(charts);
        }

        /** True where more was printed than is kept. */
        public boolean printedCut() {
            return printedMissing > 0;
        }
    }

    /**
     * It ran to its end.
     *
     * @param trace what it left behind
     * @param value its last value as Java writes it, with a word on what is missing where it is very long; empty where
     *     the last piece has none
     * @param type the Java type of that value; empty where it has none
     */
    record Done(Trace trace, String value, String type) implements Outcome {}

    /**
     * It is not Java yet; the pieces before the first problem did run.
     *
     * @param trace what those pieces left behind
     * @param problems what the compiler found, at least one
     */
    record NotJava(Trace trace, List<Problem> problems) implements Outcome {

        /** Keeps its own copies. */
        public NotJava {
            problems = List.copyOf(problems);
        }
    }

    /**
     * It threw.
     *
     * @param trace what it left behind before
     * @param exception simple name of the exception's class
     * @param message its message; empty where it has none
     * @param line line of the learner's snippet it came from, from 1; 0 where unknown
     */
    record Threw(Trace trace, String exception, String message, int line) implements Outcome {

        /** The message where a snippet waits for something to be typed. */
        static final String NO_TYPING = "nothing can be typed in here: write the value into the Java instead.";

        /** True where it tried to read what somebody types. */
        public boolean wantsTyping() {
            return message.equals(NO_TYPING);
        }
    }

    /**
     * It was ended from outside; names and values from before it are there again.
     *
     * @param trace what it left behind before
     * @param cause why
     * @param computedMillis processor time its Java machine took, as far as it was looked at; 0 for one that ended soon
     */
    record Stopped(Trace trace, Cause cause, long computedMillis) implements Outcome {}

    /** Why a snippet was ended. */
    enum Cause {
        /** It computed longer than the limit of processor time. */
        TIME,
        /** It did not end within the limit of the clock, though it computed less than it may. */
        WAIT,
        /** It asked for more memory than the limit. */
        MEMORY,
        /** It ended its own Java machine, as {@code System.exit} does. */
        EXIT,
        /** It printed more than the limit. */
        OUTPUT,
        /** The learner asked. */
        ASKED
    }

    /**
     * One thing the compiler found.
     *
     * @param line line of the learner's snippet, from 1
     * @param column column in that line, from 1
     * @param words what is wrong, in plain words
     * @param compiler the compiler's own words
     */
    record Problem(int line, int column, String words, String compiler) {}
}
