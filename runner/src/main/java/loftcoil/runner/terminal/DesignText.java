package loftcoil.runner.terminal;

import java.util.ArrayList;
import java.util.List;
import loftcoil.runner.show.View;

/** The learner's design as lines of text. */
final class DesignText {

    private DesignText() {}

    static List<String> lines(View.Design design, int width) {
        List<String> lines = new ArrayList<>();
        lines.add(design.name());
        lines.addAll(Wrap.lines(design.picture().says(), width));
        lines.addAll(Wrap.lines(design.circulates(), width));
        lines.addAll(FigureText.lines(design.figures()));
        design.cautions().forEach(caution -> lines.addAll(Wrap.lines("- " + caution, width)));
        return lines;
    }
}
