package loftcoil.engine.sheet;

import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import loftcoil.engine.words.Measure;
import loftcoil.engine.words.MeasureKind;

/**
 * A quantity: its one name, unit and rounding, wherever it is shown.
 *
 * @param <S> what has it, such as a tank
 * @param key its name in JSON, below the part that has it; a dot goes a step deeper
 * @param label what it is called
 * @param kind what it measures, and so the unit of its value
 * @param decimals decimal places for a person
 * @param better which way is better
 * @param main whether it is one of the few that are shown first
 * @param head the heading of its column in the table of months; empty where it has none
 * @param value its value; NaN where it has none
 * @param note what is said behind its value; mostly empty
 */
public record Figure<S>(
        String key,
        String label,
        MeasureKind kind,
        int decimals,
        Better better,
        boolean main,
        String head,
        ToDoubleFunction<S> value,
        Function<S, String> note) {

    /** A time from which a person says hours, min. */
    private static final double HOURS_FROM_MIN = 120;

    private static final double MIN_PER_H = 60;

    static <S> Figure<S> of(String key, String label, MeasureKind kind, int decimals, ToDoubleFunction<S> value) {
        return new Figure<>(key, label, kind, decimals, Better.NONE, false, "", value, source -> "");
    }

    Figure<S> more() {
        return new Figure<>(key, label, kind, decimals, Better.MORE, main, head, value, note);
    }

    Figure<S> less() {
        return new Figure<>(key, label, kind, decimals, Better.LESS, main, head, value, note);
    }

    Figure<S> first() {
        return new Figure<>(key, label, kind, decimals, better, true, head, value, note);
    }

    Figure<S> headed(String column) {
        return new Figure<>(key, label, kind, decimals, better, main, column, value, note);
    }

    Figure<S> noted(Function<S, String> words) {
        return new Figure<>(key, label, kind, decimals, better, main, head, value, words);
    }

    /**
     * What it is called where it has to be told whose it is, such as "kitchen sink: flow".
     *
     * @param whose name of a tap or month; empty where it needs none
     */
    public String labelOf(String whose) {
        return whose.isEmpty() ? label : whose + ": " + label;
    }

    /** A value of it, to be written as all its values are; minutes become hours where a person would say hours. */
    public Measure measure(double of) {
        return measure(of, of);
    }

    /**
     * The same in the unit that another value of it has.
     *
     * @param of the value
     * @param beside the largest of the values that stand side by side
     */
    public Measure measure(double of, double beside) {
        return kind == MeasureKind.TIME_MIN && Math.abs(beside) >= HOURS_FROM_MIN
                ? Measure.rounded(of / MIN_PER_H, MeasureKind.TIME_H, decimals)
                : Measure.rounded(of, kind, decimals);
    }
}
