package loftcoil.runner.show;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import loftcoil.engine.caution.Caution;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.sheet.FigureGroup;
import loftcoil.engine.sheet.Sheet;
import loftcoil.engine.study.Comparison;
import loftcoil.engine.study.Rebuild;
import loftcoil.engine.study.Row;
import loftcoil.engine.study.Trend;

/** Two designs side by side, in words. */
public final class SideBySide {

    private static final String SAME = "same";

    private SideBySide() {}

    /**
     * Everything to show of a comparison.
     *
     * @param compared the two designs
     * @param effects what each change between them does alone; may be empty
     */
    public static RebuildView.SideBySide of(Comparison compared, List<Rebuild.Effect> effects) {
        Sheet before = compared.before();
        Sheet after = compared.after();
        return new RebuildView.SideBySide(
                LoopPanel.picture("Before: " + before.design().name(), before.design()),
                LoopPanel.picture("After: " + after.design().name(), after.design()),
                before.loop().words(),
                after.loop().words(),
                SafetyWords.of(after.verdict()),
                groups(compared),
                SafetyWords.findings(compared.cautionsRaised()),
                SafetyWords.findings(compared.cautionsSettled()),
                staying(compared),
                effects.stream().map(SideBySide::effect).toList(),
                after.year().isPresent() || before.year().isPresent());
    }

    private static List<RebuildView.Group> groups(Comparison compared) {
        Map<FigureGroup, List<Row>> grouped = new EnumMap<>(FigureGroup.class);
        compared.rows().forEach(row -> grouped.computeIfAbsent(row.group(), group -> new ArrayList<>())
                .add(row));
        return grouped.entrySet().stream()
                .map(entry -> group(
                        entry.getKey(),
                        entry.getValue().stream().map(SideBySide::line).toList()))
                .toList();
    }

    private static RebuildView.Group group(FigureGroup group, List<RebuildView.Line> lines) {
        long changed = lines.stream().filter(line -> !line.turn().equals(SAME)).count();
        return new RebuildView.Group(group.words(), (int) changed, lines);
    }

    private static RebuildView.Effect effect(Rebuild.Effect effect) {
        List<RebuildView.Line> lines = effect.result()
                .comparison()
                .map(alone -> alone.changed().stream()
                        .filter(Row::main)
                        .map(SideBySide::line)
                        .filter(line -> !line.turn().equals(SAME))
                        .toList())
                .orElse(List.of());
        List<String> refused = effect.result() instanceof Rebuild.Refused no
                ? no.faults().stream().map(Fault::line).toList()
                : List.of();
        return new RebuildView.Effect(effect.change().words(), refused, lines);
    }

    /** What differs only beyond the digits that are shown is the same to a reader. */
    private static RebuildView.Line line(Row row) {
        String before = row.shownBefore();
        String after = row.shownAfter();
        boolean same = row.turn() == Trend.SAME || before.equals(after);
        return new RebuildView.Line(
                row.label(),
                row.shownUnit(),
                before,
                after,
                same ? "" : row.shownDifference(),
                same ? SAME : row.turn().name().toLowerCase(Locale.ROOT));
    }

    private static List<View.Finding> staying(Comparison compared) {
        Set<String> old =
                compared.before().cautions().stream().map(Caution::code).collect(Collectors.toSet());
        return SafetyWords.findings(compared.after().cautions().stream()
                .filter(caution -> old.contains(caution.code()))
                .toList());
    }
}
