package loftcoil.runner.terminal;

import java.util.ArrayList;
import java.util.List;
import loftcoil.runner.show.View;

/** What a snippet left, as lines of text. */
final class RunText {

    private RunText() {}

    static List<String> lines(View.Run run, int width) {
        List<String> lines = new ArrayList<>();
        run.printed().lines().forEach(line -> lines.add("  " + line));
        if (!run.value().isEmpty()) {
            lines.add("  = " + run.value());
        }
        for (View.Picture chart : run.charts()) {
            lines.add("");
            lines.addAll(Wrap.lines("Plot: " + chart.title(), width));
            lines.addAll(Wrap.lines(chart.says(), width));
            lines.addAll(TextTable.lines(chart.columns(), chart.rows(), width));
        }
        run.predictions().forEach(guess -> lines.addAll(Wrap.lines(guess, width)));
        return lines;
    }
}
