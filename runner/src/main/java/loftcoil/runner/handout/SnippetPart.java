package loftcoil.runner.handout;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import loftcoil.engine.words.Numeral;
import loftcoil.engine.words.Units;
import loftcoil.runner.chart.ChartDrawer;
import loftcoil.runner.chart.ChartOrder;
import loftcoil.runner.lesson.Step;
import loftcoil.runner.session.Outcome;
import loftcoil.runner.show.ChartUnits;
import loftcoil.runner.show.Html;
import loftcoil.runner.show.Slider;
import loftcoil.runner.show.View;

/** Java of a lesson, what it prints and what it draws. */
final class SnippetPart {

    private static final Pattern NUMBER = Pattern.compile("(?<![\\p{L}\\d.])[-−]?\\d+(?:\\.\\d+)?");
    private static final int LEAST_BLANK = 8;
    private static final int MOST_PRINTED = 14;

    private SnippetPart() {}

    /**
     * The snippet with its result.
     *
     * @param blank true where the class has guessed what comes: numbers that it works out are left to be written in
     */
    static List<Block> of(Step.Snippet snippet, LessonRuns runs, boolean blank, Units units) {
        Outcome outcome = runs.run(snippet);
        String drag = snippet.drag()
                .map(runs::start)
                .map(start -> slider(Slider.of(start, units)))
                .orElse("");
        List<String> charts = outcome.trace().charts().stream()
                .map(order -> chart(ChartUnits.in(units, order)))
                .toList();
        String whole = shortened(said(outcome));
        String said = blank ? blanked(whole, snippet.source()) : whole;
        String result = said.isBlank()
                ? ""
                : Html.element(
                                "p",
                                "small",
                                "It prints" + (units == Units.US ? ", in metric units" : "")
                                        + (blank ? " (write in what you expect, then what it is):" : ":"))
                        + Html.element("pre", "printed", Html.text(said));
        String snippetAndResult = Html.element(
                "div", "snippet", Html.element("pre", Html.text(inSight(snippet.source()))) + drag + result);
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block(snippetAndResult, !charts.isEmpty()));
        charts.forEach(chart -> blocks.add(Block.of(chart)));
        return blocks;
    }

    /** Preparation takes paper and is not changed with a pen. */
    private static String inSight(String source) {
        List<String> lines = source.stripTrailing().lines().toList();
        List<String> seen = new ArrayList<>();
        int at = 0;
        for (View.Fold fold : View.folds(source)) {
            seen.addAll(lines.subList(at, fold.from() - 1));
            int last = seen.size() - 1;
            seen.set(last, seen.get(last) + "  … " + fold.count() + " more lines on the screen");
            at = fold.to();
        }
        seen.addAll(lines.subList(at, lines.size()));
        return String.join("\n", seen);
    }

    private static String said(Outcome outcome) {
        String printed = outcome.trace().printed().stripTrailing();
        if (outcome instanceof Outcome.Done done) {
            boolean telling = !done.value().isEmpty() && !done.type().endsWith("PrintStream");
            return printed
                    + (telling ? (printed.isEmpty() ? "" : "\n") + "value: " + tidy(done.value(), done.type()) : "");
        }
        // Told rather than left out: a teacher must not hand out a sheet that hides it.
        return printed + (printed.isEmpty() ? "" : "\n") + "This Java did not run to its end.";
    }

    /** A long list is read on the screen; on paper its beginning shows what it is. */
    private static String shortened(String said) {
        List<String> lines = said.lines().toList();
        return lines.size() <= MOST_PRINTED
                ? said
                : String.join("\n", lines.subList(0, MOST_PRINTED)) + "\n… " + (lines.size() - MOST_PRINTED)
                        + " more lines on the screen";
    }

    private static String tidy(String value, String type) {
        return type.equals("double") && value.length() > LEAST_BLANK
                ? Numeral.shown(Double.parseDouble(value), 5)
                : value;
    }

    /** Numbers that the Java itself does not hold become lines to write on. */
    static String blanked(String printed, String source) {
        Set<String> known =
                NUMBER.matcher(source).results().map(MatchResult::group).collect(Collectors.toSet());
        return NUMBER.matcher(printed)
                .replaceAll(found -> known.contains(found.group())
                        ? found.group()
                        : "_".repeat(Math.max(LEAST_BLANK, found.group().length() + 2)));
    }

    private static String slider(Slider drag) {
        return Html.element(
                "p",
                "small",
                Html.text(drag.label() + ": here " + drag.words(drag.start()) + "; on the screen it slides from "
                        + drag.words(drag.from()) + " to " + drag.words(drag.to()) + "."));
    }

    private static String chart(ChartOrder order) {
        String svg = ChartDrawer.draw(order)
                .svg()
                .replaceFirst("font-family=\"system-ui", "font-family=\"Sheet Sans, system-ui");
        return Html.element("div", "chart", svg);
    }
}
