package loftcoil.runner.exercise;

import java.util.Collections;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What every kind of exercise has.
 *
 * @param path path below the exercises folder without ending
 * @param text the question, in CommonMark
 * @param before true for a prediction
 * @param vary numbers that differ between learners, by Java name
 * @param source where the reference value is from; empty only for a decision
 * @param solution the worked solution; its parts are empty only for a decision
 * @param shown where a calculation was shown with other numbers: the first words of that paragraph, or the name of the snippet
 *     whose plot is read; empty where nothing is calculated
 */
public record About(
        String path,
        String text,
        boolean before,
        SortedMap<String, Span> vary,
        String source,
        Solution solution,
        String shown) {

    /** An exercise to which nothing had to be shown. */
    public About(
            String path, String text, boolean before, SortedMap<String, Span> vary, String source, Solution solution) {
        this(path, text, before, vary, source, solution, "");
    }

    /** Keeps its own copies. */
    public About {
        vary = Collections.unmodifiableSortedMap(new TreeMap<>(vary));
    }

    About with(Numbers numbers) {
        Solution own = new Solution(
                numbers.fill(solution.first()), numbers.fill(solution.text()), numbers.before(solution.java()));
        return new About(path, numbers.asked(text), before, new TreeMap<>(Map.of()), numbers.fill(source), own, shown);
    }

    /**
     * The stops a number may take.
     *
     * @param from least value
     * @param to greatest value, not below {@code from}
     * @param by distance between stops, above zero
     */
    public record Span(double from, double to, double by) {

        /** Checks that there is at least one stop and no absurd number of them. */
        public Span {
            if (!(from <= to && by > 0 && (to - from) / by <= MOST_STOPS)) {
                throw new IllegalArgumentException("from " + from + " to " + to + " by " + by
                        + "; allowed: from at or below to, by above 0, at most " + MOST_STOPS + " stops");
            }
        }

        static final int MOST_STOPS = 10_000;

        /** How many stops there are. */
        public int stops() {
            // The small part keeps 0.3 / 0.1 = 2.9999… from losing its last stop.
            return (int) Math.floor((to - from) / by + 1e-9) + 1;
        }
    }

    /**
     * The way to the answer.
     *
     * @param first what to do first, in CommonMark, said to a wrong answer that shows no usual slip; empty where nothing is
     * @param text step by step, in CommonMark; {@code {{answer}}} stands for the reference value
     * @param java a route to the number other than the reference's own; empty where there is none
     */
    public record Solution(String first, String text, String java) {

        /** A solution of which nothing is said beforehand. */
        public Solution(String text, String java) {
            this("", text, java);
        }
    }
}
