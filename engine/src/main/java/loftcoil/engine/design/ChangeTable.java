package loftcoil.engine.design;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import loftcoil.engine.fault.Allowed;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.fault.KnownNames;
import loftcoil.engine.fault.RefusedException;

/** Collects named changes; reads as one line a change. */
final class ChangeTable {

    /** A change with what reads its present value and what makes it. */
    record Entry(Change change, Function<Design, String> current, BiFunction<Design, String, Design> apply) {}

    /** Waits for how a number is read and set. */
    interface Numbered {
        void as(Function<Design, Number> current, BiFunction<Design, Double, Design> apply);
    }

    /** Waits for how a whole number is read and set. */
    interface Whole {
        void as(Function<Design, Integer> current, BiFunction<Design, Integer, Design> apply);
    }

    /** Waits for how a name is read and set. */
    interface Chosen {
        void as(Function<Design, String> current, BiFunction<Design, String, Design> apply);
    }

    /** Digits that a value keeps when it is shown: more than any tape measure, fewer than the rounding of sums. */
    private static final int DIGITS = 6;

    private final Map<String, Entry> entries = new LinkedHashMap<>();

    Map<String, Entry> entries() {
        return entries;
    }

    Numbered number(String name, String label, Allowed range) {
        Change change = new Change(name, label, range.unit(), Optional.of(range), List.of());
        return (current, apply) -> put(
                change,
                design -> shown(current.apply(design).doubleValue()),
                (design, text) -> apply.apply(design, number(change, text)));
    }

    Whole whole(String name, String label, Allowed range) {
        Change change = new Change(name, label, range.unit(), Optional.of(range), List.of());
        return (current, apply) -> put(
                change,
                design -> Integer.toString(current.apply(design)),
                (design, text) -> apply.apply(design, whole(change, text)));
    }

    Chosen choice(String name, String label, List<String> options) {
        Change change = new Change(name, label, "", Optional.empty(), options);
        return (current, apply) -> put(change, current, (design, text) -> apply.apply(design, option(change, text)));
    }

    private void put(Change change, Function<Design, String> current, BiFunction<Design, String, Design> apply) {
        if (entries.put(change.name(), new Entry(change, current, apply)) != null) {
            throw new IllegalStateException("two changes are named " + change.name());
        }
    }

    private static double number(Change change, String text) {
        Allowed range = change.range().orElseThrow();
        double value;
        try {
            value = Double.parseDouble(text);
        } catch (NumberFormatException noNumber) {
            String why = "a number with a decimal point is wanted";
            throw new RefusedException(List.of(new Fault(change.name(), "\"" + text + "\"", range.toString(), why)));
        }
        return range.require(change.name(), value);
    }

    private static int whole(Change change, String text) {
        double value = number(change, text);
        if (value != Math.rint(value)) {
            String allowed = change.range().orElseThrow().toString();
            throw new RefusedException(List.of(new Fault(change.name(), text, allowed, "a whole number is wanted")));
        }
        return (int) value;
    }

    private static String option(Change change, String text) {
        if (!change.options().contains(text)) {
            throw new RefusedException(
                    List.of(new KnownNames("option", change.options()).unknown(change.name(), text)));
        }
        return text;
    }

    private static String shown(double value) {
        BigDecimal rounded =
                new BigDecimal(value).round(new MathContext(DIGITS)).stripTrailingZeros();
        return rounded.signum() == 0 ? "0" : rounded.toPlainString();
    }
}
