package loftcoil.runner.terminal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loftcoil.runner.show.View;

/** What would clear the dangers of a design, as lines of text. */
final class ClearsText {

    private static final int TEXT_AT = 5;

    private ClearsText() {}

    /** Lines in which the ways are numbered through, from 1. */
    static List<String> lines(View.Clears clears, int width) {
        List<String> lines = new ArrayList<>();
        int from = 1;
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
            items(danger.ways(), from, width, lines);
            if (!danger.rarerHead().isEmpty()) {
                lines.addAll(Wrap.lines(danger.rarerHead(), width));
                items(danger.rarer(), from + danger.ways().size(), width, lines);
            }
            from += danger.ways().size() + danger.rarer().size();
        }
        return lines;
    }

    /** A way by its danger and its number there, from 0. */
    record Numbered(String danger, int number) {}

    static boolean hasWays(View.ClearedDanger danger) {
        return !danger.ways().isEmpty() || !danger.rarer().isEmpty();
    }

    /** The way of a number in the lines, as it was typed; empty where there is none. */
    static Optional<Numbered> numbered(View.Clears clears, String typed) {
        int left = typed.matches("\\d{1,4}") ? Integer.parseInt(typed) - 1 : -1;
        for (View.ClearedDanger danger : clears.dangers()) {
            int here = danger.ways().size() + danger.rarer().size();
            if (left >= 0 && left < here) {
                return Optional.of(new Numbered(danger.code(), left));
            }
            left -= here;
        }
        return Optional.empty();
    }

    private static void items(List<String> items, int from, int width, List<String> lines) {
        for (int i = 0; i < items.size(); i++) {
            lines.addAll(Wrap.hanging("%3d  %s".formatted(from + i, items.get(i)), TEXT_AT, width));
        }
    }
}
