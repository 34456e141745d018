package loftcoil.engine.design;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.regex.Pattern;
import loftcoil.engine.fault.Allowed;
import loftcoil.engine.fault.KnownNames;
import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.pipe.TubeTable;
import loftcoil.engine.words.Numeral;

/** Collects named changes; reads as one line a change. */
final class ChangeTable {

    /**
     * A change with what reads its present value and what makes it.
     *
     * @param decides paths of the fields it decides, {@code []} for each item of a list
     */
    record Entry(
            Change change,
            Function<Design, String> current,
            BiFunction<Design, String, Design> apply,
            List<String> decides) {}

    /** Waits for how a number is read and set. */
    interface Numbered {
        void as(Function<Design, Number> current, BiFunction<Design, Double, Design> apply);
    }

    /** Waits for how a whole number is read and set. */
    interface Whole {
        void as(Function<Design, Integer> current, BiFunction<Design, Integer, Design> apply);
    }

    /** Waits for how a choice is read and set. */
    interface Chosen<E> {
        void as(Function<Design, E> current, BiFunction<Design, E, Design> apply);
    }

    /** Digits that a value keeps when it is shown: more than any tape measure, fewer than the rounding of sums. */
    private static final int DIGITS = 6;

    private static final Pattern NUMBER = Pattern.compile("-?\\d+\\.\\d+");

    private final Map<String, Entry> entries = new LinkedHashMap<>();

    Map<String, Entry> entries() {
        return entries;
    }

    /** Fields that are changed by themselves. */
    void fields(String... paths) {
        for (String path : paths) {
            put(field(path, (design, text) -> DesignTable.set(design, path, text)));
        }
    }

    /** A number after which other fields have to follow. */
    void follows(String path, BiFunction<Design, Double, Design> apply) {
        follows(path, design -> shown(DesignTable.get(design, path)), apply);
    }

    /** The same where what stands now has to be worked out. */
    void follows(String path, Function<Design, String> current, BiFunction<Design, Double, Design> apply) {
        Change change = described(path);
        Allowed range = change.range().orElseThrow();
        put(new Entry(
                change, current, (design, text) -> apply.apply(design, Leaf.number(path, text, range)), List.of(path)));
    }

    /** The change of any field, made so. */
    static Entry field(String path, BiFunction<Design, String, Design> apply) {
        return new Entry(described(path), design -> shown(DesignTable.get(design, path)), apply, List.of(path));
    }

    private static Change described(String path) {
        DesignField field = DesignFields.at(path).orElseThrow(() -> Target.unknown(path));
        return new Change(path, field.label(), field.unit(), field.range(), field.options());
    }

    Numbered number(String name, String label, Allowed range, String... decides) {
        Change change = new Change(name, label, range.unit(), Optional.of(range), List.of());
        return (current, apply) -> put(new Entry(
                change,
                design -> shown(Numeral.typed(current.apply(design).doubleValue())),
                (design, text) -> apply.apply(design, Leaf.number(name, text, range)),
                List.of(decides)));
    }

    Whole whole(String name, String label, Allowed range, String... decides) {
        Change change = new Change(name, label, range.unit(), Optional.of(range), List.of());
        return (current, apply) -> put(new Entry(
                change,
                design -> Integer.toString(current.apply(design)),
                (design, text) -> apply.apply(design, Leaf.whole(name, text, range)),
                List.of(decides)));
    }

    /** One of a list with codes. */
    <E extends Enum<E> & Coded> Chosen<E> choice(String name, String label, Class<E> type, String... decides) {
        Change change = new Change(name, label, "", Optional.empty(), Coded.codes(type));
        return (current, apply) -> put(new Entry(
                change,
                design -> current.apply(design).code(),
                (design, text) -> apply.apply(design, Coded.find(type, text).orElseThrow(() -> unknown(change, text))),
                List.of(decides)));
    }

    /** One name of a table. */
    Chosen<String> named(String name, String label, List<String> options, String... decides) {
        Change change = new Change(name, label, "", Optional.empty(), options);
        return (current, apply) -> put(new Entry(
                change,
                current,
                (design, text) -> {
                    if (!options.contains(text)) {
                        throw unknown(change, text);
                    }
                    return apply.apply(design, text);
                },
                List.of(decides)));
    }

    /** A tube, by a name of the tube table or by its size. */
    Chosen<String> tube(String name, String label, String... decides) {
        Change change = new Change(name, label, "", Optional.empty(), TubeTable.names());
        return (current, apply) -> put(new Entry(
                change,
                current,
                (design, text) ->
                        apply.apply(design, TubeTable.require(name, text).name()),
                List.of(decides)));
    }

    private void put(Entry entry) {
        if (entries.put(entry.change().name(), entry) != null) {
            throw new IllegalStateException(
                    "two changes are named " + entry.change().name());
        }
    }

    private static RefusedException unknown(Change change, String text) {
        return new RefusedException(List.of(new KnownNames("option", change.options()).unknown(change.name(), text)));
    }

    /** A number with the digits that are shown; any other text as it is. */
    static String shown(String text) {
        if (!NUMBER.matcher(text).matches()) {
            return text;
        }
        return Numeral.typed(Double.parseDouble(text), DIGITS);
    }
}
