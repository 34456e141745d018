package loftcoil.runner.show;

import java.util.List;
import java.util.Set;
import loftcoil.engine.words.Numeral;
import loftcoil.engine.words.Units;
import loftcoil.runner.chart.ChartDrawer;
import loftcoil.runner.chart.ChartOrder;
import loftcoil.runner.chart.ChartPicture;
import loftcoil.runner.session.Outcome;

/** What came of a snippet, put into words. */
final class RunWords {

    private static final Set<String> DECIMAL = Set.of("double", "float", "Double", "Float");
    private static final Set<String> WHOLE = Set.of("int", "long", "Integer", "Long");
    /** What a call of {@code printf} comes to: it says nothing beside what was printed. */
    private static final Set<String> NOT_WORTH_SHOWING = Set.of("PrintStream", "java.io.PrintStream");

    private static final int DIGITS = 5;

    private RunWords() {}

    /**
     * The view of an outcome.
     *
     * @param outcome what came of it
     * @param before what is said first, such as of pieces above that had to run; empty where nothing
     * @param predictions what the learner had guessed, beside what it came to
     * @param units whose units its plots are in
     */
    static View.Run of(Outcome outcome, String before, List<String> predictions, Units units) {
        Outcome.Trace trace = outcome.trace();
        List<View.Picture> charts = trace.charts().stream()
                .map(order -> picture(ChartUnits.in(units, order)))
                .toList();
        String printed = printed(trace);
        if (outcome instanceof Outcome.Done done) {
            String value = value(done.value(), done.type());
            return new View.Run(
                    View.RunState.DONE,
                    before,
                    printed,
                    value,
                    done.type(),
                    List.of(),
                    charts,
                    predictions,
                    trace.millis());
        }
        if (outcome instanceof Outcome.NotJava notJava) {
            List<View.Problem> problems = notJava.problems().stream()
                    .map(p -> new View.Problem(p.line(), p.column(), p.words(), p.compiler()))
                    .toList();
            return failed(
                    View.RunState.PROBLEMS,
                    before + "This does not read as Java yet.",
                    printed,
                    problems,
                    charts,
                    trace);
        }
        if (outcome instanceof Outcome.Threw threw) {
            return failed(View.RunState.THREW, before + ThrownWords.of(threw), printed, List.of(), charts, trace);
        }
        Outcome.Stopped stopped = (Outcome.Stopped) outcome;
        return failed(View.RunState.STOPPED, before + stopped(stopped), printed, List.of(), charts, trace);
    }

    private static View.Run failed(
            View.RunState state,
            String words,
            String printed,
            List<View.Problem> problems,
            List<View.Picture> charts,
            Outcome.Trace trace) {
        return new View.Run(state, words, printed, "", "", problems, charts, List.of(), trace.millis());
    }

    /** What it printed, and how much of it and of its plots is not shown. */
    private static String printed(Outcome.Trace trace) {
        StringBuilder printed = new StringBuilder(trace.printed());
        if (trace.printedMissing() > 0) {
            printed.append("\n… the rest is not shown: ")
                    .append(trace.printedMissing())
                    .append(" more characters");
        }
        if (trace.chartsMissing() > 0) {
            printed.append(printed.isEmpty() || printed.charAt(printed.length() - 1) == '\n' ? "" : "\n")
                    .append("… of ")
                    .append(trace.charts().size() + trace.chartsMissing())
                    .append(" plots only the first ")
                    .append(trace.charts().size())
                    .append(" are shown");
        }
        return printed.toString();
    }

    private static String stopped(Outcome.Stopped stopped) {
        long waited = Math.round(stopped.trace().millis() / 1000.0);
        long computed = Math.round(stopped.computedMillis() / 1000.0);
        String why =
                switch (stopped.cause()) {
                    case TIME ->
                        "It ran longer than a snippet may and was ended, after " + computed + " s of computing and "
                                + waited + " s by the clock. Is there a loop that never ends?";
                    case WAIT ->
                        "It was ended after " + waited + " s by the clock, in which it computed for " + computed
                                + " s. Does it sleep, or wait for something that never comes?";
                    case MEMORY -> "It asked for more memory than a snippet may have and was ended.";
                    case EXIT -> "It ended its own Java, which a snippet should not do.";
                    case OUTPUT -> "It printed far more than anyone can read and was ended.";
                    case ASKED -> "Ended, as you asked.";
                };
        return why + " What ran before it is still there.";
    }

    /** A chart as it is drawn. */
    static View.Picture picture(ChartOrder order) {
        ChartPicture drawn = ChartDrawer.draw(order);
        return new View.Picture(order.title(), drawn.svg(), drawn.says(), drawn.columns(), drawn.rows());
    }

    /** The value of a snippet, decimals cut to five significant digits; empty where it says nothing. */
    private static String value(String value, String type) {
        if (NOT_WORTH_SHOWING.contains(type)) {
            return "";
        }
        try {
            return DECIMAL.contains(type)
                    ? Numeral.shown(Double.parseDouble(value), DIGITS)
                    : WHOLE.contains(type) ? Numeral.minus(value) : value;
        } catch (NumberFormatException notANumber) {
            return value;
        }
    }
}
