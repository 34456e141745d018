package loftcoil.engine.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import loftcoil.engine.caution.Caution;
import loftcoil.engine.design.Design;
import loftcoil.engine.sheet.Figures;
import loftcoil.engine.sheet.Sheet;
import loftcoil.engine.sheet.SheetFigure;

/**
 * Two designs side by side, figure by figure, such as a system as it stands and the same rebuilt.
 *
 * @param before sheet of the earlier design
 * @param after sheet of the later design
 * @param rows every figure that either sheet has, in the order of the sheet
 */
public record Comparison(Sheet before, Sheet after, List<Row> rows) {

    /** Keeps a copy of the rows. */
    public Comparison {
        rows = List.copyOf(rows);
    }

    /**
     * Compares two designs without their years, the tank at {@link Sheet#USUAL_TANK_C}.
     *
     * @throws loftcoil.engine.fault.RefusedException where either cannot be computed
     */
    public static Comparison of(Design before, Design after) {
        return of(Sheet.of(before), Sheet.of(after));
    }

    /**
     * Compares two designs with their years, the tank at {@link Sheet#USUAL_TANK_C} for the figures of the loop. Takes seconds.
     *
     * @throws loftcoil.engine.fault.RefusedException where either cannot be computed
     */
    public static Comparison whole(Design before, Design after) {
        return of(Sheet.whole(before, Sheet.USUAL_TANK_C), Sheet.whole(after, Sheet.USUAL_TANK_C));
    }

    /** Compares two sheets, both with or both without a year, of tanks at one temperature. */
    public static Comparison of(Sheet before, Sheet after) {
        Map<String, SheetFigure> old = byKey(before);
        Map<String, SheetFigure> now = byKey(after);
        List<Row> rows = new ArrayList<>();
        Map<String, SheetFigure> either = new LinkedHashMap<>(old);
        either.putAll(now);
        either.forEach((key, known) -> rows.add(Row.of(known, value(old, key), value(now, key))));
        rows.sort(Comparator.comparing(Row::group));
        return new Comparison(before, after, rows);
    }

    /** The figures that changed. */
    public List<Row> changed() {
        return rows.stream().filter(row -> row.turn() != Trend.SAME).toList();
    }

    /** Cautions that only the later design raises; one that changed its words for worse or better is in neither list. */
    public List<Caution> cautionsRaised() {
        return onlyIn(after, before);
    }

    /** Cautions that only the earlier design raises. */
    public List<Caution> cautionsSettled() {
        return onlyIn(before, after);
    }

    private static List<Caution> onlyIn(Sheet one, Sheet other) {
        Set<String> codes = new LinkedHashSet<>();
        other.cautions().forEach(caution -> codes.add(caution.code()));
        return one.cautions().stream()
                .filter(caution -> !codes.contains(caution.code()))
                .toList();
    }

    private static Map<String, SheetFigure> byKey(Sheet sheet) {
        Map<String, SheetFigure> figures = new LinkedHashMap<>();
        Figures.of(sheet).forEach(figure -> figures.put(figure.key(), figure));
        return figures;
    }

    private static OptionalDouble value(Map<String, SheetFigure> figures, String key) {
        SheetFigure figure = figures.get(key);
        return figure == null ? OptionalDouble.empty() : OptionalDouble.of(figure.value());
    }
}
