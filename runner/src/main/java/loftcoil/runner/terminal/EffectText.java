package loftcoil.runner.terminal;

import java.util.ArrayList;
import java.util.List;
import loftcoil.runner.show.RebuildView;
import loftcoil.runner.show.View;

/** What a decision changes, as lines of text. */
final class EffectText {

    private EffectText() {}

    static List<String> lines(View.Effect effect, int width) {
        List<String> lines = new ArrayList<>();
        for (RebuildView.Line line : effect.lines()) {
            String unit = line.unit().isEmpty() ? "" : " " + line.unit();
            boolean same = line.turn().equals("same");
            String turn = line.turn().equals("better") || line.turn().equals("worse") ? ", " + line.turn() : "";
            lines.add("  " + line.label() + ": "
                    + (same
                            ? or(line.after()) + unit + ", as before"
                            : or(line.before()) + " → " + or(line.after()) + unit + turn));
        }
        findings("Comes with it: ", effect.raised(), lines);
        findings("Stays, and reads now: ", effect.changed(), lines);
        findings("Gone with it: ", effect.settled(), lines);
        effect.moved().forEach(moved -> lines.add("With it moved: " + moved));
        if (!effect.open().isEmpty()) {
            lines.add(effect.open());
        }
        return lines.stream().flatMap(line -> Wrap.lines(line, width).stream()).toList();
    }

    private static String or(String value) {
        return value.isEmpty() ? "none" : value;
    }

    private static void findings(String heading, List<View.Finding> findings, List<String> lines) {
        findings.forEach(found -> lines.add(heading + found.label() + ": " + found.text()));
    }
}
