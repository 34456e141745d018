package loftcoil.runner.show;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import loftcoil.engine.sheet.FigureGroup;

/** Two designs side by side as lines of plain text. */
public final class ComparisonText {

    /** Three columns of numbers and one of words. */
    private static final int VALUES_WIDTH = 44;

    private static final int LEAST_LABEL_WIDTH = 16;

    private final int labelWidth;
    private final List<String> lines = new ArrayList<>();

    private ComparisonText(int width) {
        this.labelWidth = Math.max(LEAST_LABEL_WIDTH, width - VALUES_WIDTH);
    }

    /**
     * The figures that changed under their headings, the cautions that came and went, and each change by itself. The months
     * of a year are left out: there are a hundred and fifty of their figures. Prose may be longer than the width.
     *
     * @param both the two designs
     * @param width greatest length of a line of a table, in characters, at least 60
     */
    public static List<String> lines(RebuildView.SideBySide both, int width) {
        ComparisonText text = new ComparisonText(width);
        text.all(both);
        return List.copyOf(text.lines);
    }

    private void all(RebuildView.SideBySide both) {
        lines.add("Before: " + both.beforeWords());
        lines.add("After: " + both.afterWords());
        lines.addAll(SafetyText.top(both.safety()));
        if (!both.heat().isEmpty()) {
            lines.add(both.heat());
        }
        if (!both.noYear().isEmpty()) {
            lines.add("");
            lines.add(both.noYear());
        }
        lines.add("");
        lines.add("Before and after in one frame");
        lines.addAll(both.plainChange());
        differences(both.differences());
        both.groups().stream()
                .filter(group -> group.changed() > 0)
                .filter(group -> !group.words().equals(FigureGroup.MONTHS.words()))
                .forEach(this::group);
        if (both.groups().stream().allMatch(group -> group.changed() == 0)) {
            lines.add("");
            lines.add("No figure differs.");
        }
        cautions("Cautions that come with it", both.raised());
        cautions("Cautions that are gone", both.settled());
        cautions("Cautions that stay", both.staying());
        parts(both);
        effects(both.effects());
    }

    /** What to buy, what is left over, and how much of the list stays. */
    private void parts(RebuildView.SideBySide both) {
        if (both.parts().isEmpty()) {
            return;
        }
        lines.add("");
        lines.add("Parts (" + both.partsKept() + " lines of the list stay)");
        both.parts().forEach(line -> lines.add("  - " + line.fate() + ": " + line.amount() + " " + line.part()));
    }

    private void group(RebuildView.Group group) {
        lines.add("");
        row(group.words(), "before", "after", "difference", "");
        group.lines().stream().filter(line -> !line.turn().equals("same")).forEach(this::figure);
    }

    private void figure(RebuildView.Line line) {
        String unit = line.unit().isEmpty() ? "" : " [" + line.unit() + "]";
        row("  " + line.label() + unit, line.before(), line.after(), line.difference(), turn(line));
    }

    /** A label too long for its column has a line of its own. */
    private void row(String label, String before, String after, String difference, String turn) {
        String column = label;
        if (label.length() > labelWidth) {
            lines.add(label);
            column = "";
        }
        String values = String.format(Locale.ROOT, " %11s %11s %11s  %s", dash(before), dash(after), difference, turn);
        lines.add((column + " ".repeat(labelWidth - column.length()) + values).stripTrailing());
    }

    private static String turn(RebuildView.Line line) {
        return line.turn().equals("different") ? "" : line.turn();
    }

    private static String dash(String value) {
        return value.isEmpty() ? "none" : value;
    }

    private void cautions(String heading, List<View.Finding> cautions) {
        if (!cautions.isEmpty()) {
            lines.add("");
            lines.add(heading);
            cautions.forEach(caution -> lines.add("  - " + SafetyText.line(caution)));
        }
    }

    private void differences(List<RebuildView.Difference> differences) {
        lines.add("");
        if (differences.isEmpty()) {
            lines.add("The designs are the same in all.");
            return;
        }
        lines.add("What differs (" + differences.size() + ")");
        String part = "";
        for (RebuildView.Difference each : differences) {
            if (!each.part().equals(part)) {
                lines.add("  " + each.part());
                part = each.part();
            }
            String label = each.label().isEmpty() ? "" : each.label() + ": ";
            lines.add("    " + label + each.before() + " → " + each.after());
        }
    }

    private void effects(List<RebuildView.Effect> effects) {
        if (effects.isEmpty()) {
            return;
        }
        lines.add("");
        lines.add("Each change by itself");
        for (RebuildView.Effect effect : effects) {
            row(effect.words(), "before", "after", "difference", "");
            effect.refused().forEach(fault -> lines.add("  cannot be done alone: " + fault));
            effect.lines().forEach(this::figure);
            if (effect.refused().isEmpty() && effect.lines().isEmpty()) {
                lines.add("  none of the main figures changes");
            }
        }
    }
}
