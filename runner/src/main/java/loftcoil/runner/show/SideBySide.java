package loftcoil.runner.show;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import loftcoil.engine.build.PartsChange;
import loftcoil.engine.build.PartsList;
import loftcoil.engine.caution.Caution;
import loftcoil.engine.design.Change;
import loftcoil.engine.design.Changes;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.Differences;
import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.sheet.Drawing;
import loftcoil.engine.sheet.DrawingChange;
import loftcoil.engine.sheet.FigureGroup;
import loftcoil.engine.sheet.Sheet;
import loftcoil.engine.study.Comparison;
import loftcoil.engine.study.NamedValue;
import loftcoil.engine.study.Rebuild;
import loftcoil.engine.study.Row;
import loftcoil.engine.study.Trend;
import loftcoil.engine.survey.Survey;
import loftcoil.engine.words.Units;

/** Two designs side by side, in words. */
public final class SideBySide {

    private static final String SAME = "same";

    private final Units units;

    private SideBySide(Units units) {
        this.units = units;
    }

    /**
     * Everything to show of a comparison.
     *
     * @param compared the two designs
     * @param effects what each change between them does alone; may be empty
     * @param units whose units it is shown in
     */
    public static RebuildView.SideBySide of(Comparison compared, List<Rebuild.Effect> effects, Units units) {
        return of(compared, effects, "", units);
    }

    /**
     * Why the years of two designs cannot be compared: the one or the other cannot be, such as that of the other half of the earth.
     *
     * @return a sentence; empty where they can
     */
    public static String noYear(Design before, Design after, Units units) {
        String old = cannotBe(before, units);
        String who = old.isEmpty() ? "new" : "old";
        String why = old.isEmpty() ? cannotBe(after, units) : old;
        return why.isEmpty() ? "" : "No years are compared: that of the " + who + " design could not be judged: " + why;
    }

    private static String cannotBe(Design design, Units units) {
        try {
            // Whoever just asked for it has it kept.
            Sheet.whole(design, Sheet.USUAL_TANK_C);
            return "";
        } catch (RefusedException refused) {
            return SafetyWords.why(refused, units);
        }
    }

    /**
     * The same of two designs whose years cannot be compared.
     *
     * @param noYear why
     */
    public static RebuildView.SideBySide of(
            Comparison compared, List<Rebuild.Effect> effects, String noYear, Units units) {
        return new SideBySide(units).shown(compared, effects, noYear);
    }

    private RebuildView.SideBySide shown(Comparison compared, List<Rebuild.Effect> effects, String noYear) {
        Sheet before = compared.before();
        Sheet after = compared.after();
        PartsChange parts = PartsChange.between(PartsList.of(before.design()), PartsList.of(after.design()));
        DrawingChange change = DrawingChange.between(Drawing.of(before.design()), Drawing.of(after.design()));
        return new RebuildView.SideBySide(
                LoopSvg.change("What is kept, cut out and added", change, units::of),
                HouseText.change(change),
                LoopPanel.picture("Before: " + before.design().name(), before.design(), units),
                LoopPanel.over("After: " + after.design().name(), after.design(), before.design(), "as it was", units),
                before.loop().words(units),
                after.loop().words(units),
                SafetyWords.of(after.verdict(), after.design(), units),
                Survey.borrowedHeat(before.design(), after.design())
                        .map(units::words)
                        .orElse(""),
                groups(compared),
                SafetyWords.findings(compared.cautionsRaised(), units),
                SafetyWords.findings(compared.cautionsSettled(), units),
                staying(compared),
                effects.stream().map(this::effect).toList(),
                after.year().isPresent() || before.year().isPresent(),
                differences(before.design(), after.design(), units),
                parts.lines().stream()
                        .map(line -> new RebuildView.PartLine(
                                line.fate().words(),
                                units.of(line.difference()),
                                units.words(line.part().what())))
                        .toList(),
                parts.kept().size(),
                noYear);
    }

    /** All in which two designs differ, in words. */
    static List<RebuildView.Difference> differences(Design before, Design after, Units units) {
        return Differences.between(before, after).stream()
                .map(said -> new RebuildView.Difference(
                        said.part(), said.label(), units.words(said.before()), units.words(said.after())))
                .toList();
    }

    private List<RebuildView.Group> groups(Comparison compared) {
        Map<FigureGroup, List<Row>> grouped = new EnumMap<>(FigureGroup.class);
        compared.rows().forEach(row -> grouped.computeIfAbsent(row.group(), group -> new ArrayList<>())
                .add(row));
        return grouped.entrySet().stream()
                .map(entry -> group(
                        entry.getKey(),
                        entry.getValue().stream().map(this::line).toList()))
                .toList();
    }

    private static RebuildView.Group group(FigureGroup group, List<RebuildView.Line> lines) {
        long changed = lines.stream().filter(line -> !line.turn().equals(SAME)).count();
        return new RebuildView.Group(group.words(), (int) changed, lines);
    }

    private RebuildView.Effect effect(Rebuild.Effect effect) {
        List<RebuildView.Line> lines = effect.result()
                .comparison()
                .map(alone -> alone.changed().stream()
                        .filter(Row::main)
                        .map(this::line)
                        .filter(line -> !line.turn().equals(SAME))
                        .toList())
                .orElse(List.of());
        List<String> refused =
                effect.result() instanceof Rebuild.Refused no ? new Shown(units).lines(no.faults()) : List.of();
        return new RebuildView.Effect(words(effect.change()), refused, lines);
    }

    private String words(NamedValue named) {
        Change change = Changes.describe(named.name());
        return change.label() + ": " + new Shown(units).value(named.name(), named.value(), change.unit());
    }

    /** What differs only beyond the digits that are shown is the same to a reader. */
    private RebuildView.Line line(Row row) {
        return line(row, units);
    }

    /** The same for a row by itself. */
    static RebuildView.Line line(Row row, Units units) {
        String before = row.shownBefore(units);
        String after = row.shownAfter(units);
        boolean same = row.turn() == Trend.SAME || before.equals(after);
        return new RebuildView.Line(
                units.said(row.label()),
                row.shownUnit(units),
                before,
                after,
                same ? "" : row.shownDifference(units),
                same ? SAME : row.turn().name().toLowerCase(Locale.ROOT));
    }

    private List<View.Finding> staying(Comparison compared) {
        Set<String> old =
                compared.before().cautions().stream().map(Caution::code).collect(Collectors.toSet());
        return SafetyWords.findings(
                compared.after().cautions().stream()
                        .filter(caution -> old.contains(caution.code()))
                        .toList(),
                units);
    }
}
