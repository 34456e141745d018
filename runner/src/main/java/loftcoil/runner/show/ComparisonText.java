package loftcoil.runner.show;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Two designs side by side as lines of plain text. */
public final class ComparisonText {

    private ComparisonText() {}

    /** The figures that changed under their headings, the cautions that came and went, and each change by itself. */
    public static List<String> lines(RebuildView.SideBySide both) {
        List<String> lines = new ArrayList<>();
        lines.add("Before: " + both.beforeWords());
        lines.add("After:  " + both.afterWords());
        if (!both.dangerMarkdown().isEmpty()) {
            lines.add(both.dangerMarkdown().replace("**", "").strip());
        }
        both.groups().stream().filter(group -> group.changed() > 0).forEach(group -> group(lines, group));
        if (both.groups().stream().allMatch(group -> group.changed() == 0)) {
            lines.add("");
            lines.add("No figure differs.");
        }
        cautions(lines, "Cautions that come with it", both.raised());
        cautions(lines, "Cautions that are gone", both.settled());
        cautions(lines, "Cautions that stay", both.staying());
        effects(lines, both.effects());
        return lines;
    }

    private static void group(List<String> lines, RebuildView.Group group) {
        lines.add("");
        lines.add(row(group.words(), "before", "after", "difference", "").stripTrailing());
        group.lines().stream()
                .filter(line -> !line.turn().equals("same"))
                .map(ComparisonText::figure)
                .forEach(lines::add);
    }

    private static String figure(RebuildView.Line line) {
        String unit = line.unit().isEmpty() ? "" : " [" + line.unit() + "]";
        return row("  " + line.label() + unit, dash(line.before()), dash(line.after()), line.difference(), turn(line))
                .stripTrailing();
    }

    private static String row(String label, String before, String after, String difference, String turn) {
        return String.format(Locale.ROOT, "%-44s %9s %9s %11s  %s", label, before, after, difference, turn);
    }

    private static String turn(RebuildView.Line line) {
        return line.turn().equals("different") ? "" : line.turn();
    }

    private static String dash(String value) {
        return value.isEmpty() ? "none" : value;
    }

    private static void cautions(List<String> lines, String heading, List<String> cautions) {
        if (!cautions.isEmpty()) {
            lines.add("");
            lines.add(heading);
            cautions.forEach(caution -> lines.add("  - " + caution));
        }
    }

    private static void effects(List<String> lines, List<RebuildView.Effect> effects) {
        if (effects.isEmpty()) {
            return;
        }
        lines.add("");
        lines.add("Each change by itself");
        for (RebuildView.Effect effect : effects) {
            lines.add("  " + effect.words());
            effect.refused().forEach(fault -> lines.add("    cannot be done alone: " + fault));
            effect.lines().forEach(line -> lines.add("  " + figure(line)));
            if (effect.refused().isEmpty() && effect.lines().isEmpty()) {
                lines.add("    none of the main figures changes");
            }
        }
    }
}
