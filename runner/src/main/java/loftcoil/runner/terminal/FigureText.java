package loftcoil.runner.terminal;

import java.util.List;
import loftcoil.runner.show.View;

/** Figures as lines of text, their values under each other. */
final class FigureText {

    private FigureText() {}

    static List<String> lines(List<View.Figure> figures) {
        int widest = figures.stream().mapToInt(f -> f.label().length()).max().orElse(0);
        return figures.stream()
                .map(f -> "  " + f.label() + " ".repeat(widest - f.label().length()) + "  " + f.value())
                .toList();
    }
}
