package loftcoil.runner.terminal;

import java.util.ArrayList;
import java.util.List;
import loftcoil.runner.show.View;

/** What would clear the dangers of a design, as lines of text. */
final class ClearsText {

    private ClearsText() {}

    static List<String> lines(View.Clears clears, int width) {
        List<String> lines = new ArrayList<>();
        if (clears.dangers().isEmpty()) {
            lines.add(
                    clears.state() == View.ClearState.DONE
                            ? "No danger is known that would have to be cleared."
                            : "Stopped.");
        }
        if (!clears.words().isEmpty()) {
            lines.addAll(Wrap.lines(clears.words(), width));
        }
        for (View.ClearedDanger danger : clears.dangers()) {
            lines.addAll(Wrap.lines(danger.code() + ". " + danger.head(), width));
            items(danger.ways(), width, lines);
            if (!danger.rarerHead().isEmpty()) {
                lines.addAll(Wrap.lines(danger.rarerHead(), width));
                items(danger.rarer(), width, lines);
            }
        }
        return lines;
    }

    private static void items(List<String> items, int width, List<String> lines) {
        items.forEach(item -> lines.addAll(Wrap.hanging("- " + item, 2, width)));
    }
}
