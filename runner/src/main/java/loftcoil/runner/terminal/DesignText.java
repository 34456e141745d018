package loftcoil.runner.terminal;

import java.util.ArrayList;
import java.util.List;
import loftcoil.runner.show.LearnerApp;
import loftcoil.runner.show.SafetyText;
import loftcoil.runner.show.View;

/** The learner's design as lines of text. */
final class DesignText {

    private DesignText() {}

    static List<String> lines(LearnerApp bench, List<String> drawing, int width) {
        View.Design design = bench.design();
        View.Safety safety = bench.safety();
        List<String> lines = new ArrayList<>();
        lines.add(design.name());
        lines.addAll(drawing);
        lines.addAll(Wrap.lines(design.picture().says(), width));
        SafetyText.lines(safety).forEach(line -> lines.addAll(Wrap.lines(line, width)));
        if (!design.circulates().isEmpty()) {
            lines.addAll(Wrap.lines(design.circulates(), width));
        }
        lines.addAll(FigureText.lines(design.figures()));
        return lines;
    }
}
