package loftcoil.engine.design;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import java.util.function.Function;
import loftcoil.engine.design.DesignField.Assumed;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.json.JsonFields;
import loftcoil.engine.words.Numeral;

/**
 * One value that may be left out.
 *
 * @param leaf what it is like where it is said
 * @param leftOut what is taken where it is left out, in words
 * @param assumed the number taken where it is left out; empty where leaving out is no number
 * @param wrap makes what the record holds
 * @param open opens what the record holds
 */
record Said<V, O>(
        Leaf<V> leaf,
        String leftOut,
        Optional<Assumed> assumed,
        Function<Optional<V>, O> wrap,
        Function<O, Optional<V>> open)
        implements Form<O> {

    static <V> Said<V, Optional<V>> of(Leaf<V> leaf, String leftOut) {
        return new Said<>(leaf, leftOut, Optional.empty(), Function.identity(), Function.identity());
    }

    static Said<Double, OptionalDouble> number(Leaf<Double> leaf, String leftOut) {
        return number(leaf, leftOut, Optional.empty());
    }

    /** A number that has a stated stand-in where nobody says it. */
    static Said<Double, OptionalDouble> number(Leaf<Double> leaf, Assumed assumed) {
        String unit = leaf.unitAfterNumber();
        String words = Numeral.typed(assumed.usual()) + unit + ", though it may be " + Numeral.typed(assumed.low())
                + " to " + Numeral.typed(assumed.high()) + unit;
        return number(leaf, words, Optional.of(assumed));
    }

    private static Said<Double, OptionalDouble> number(Leaf<Double> leaf, String leftOut, Optional<Assumed> assumed) {
        return new Said<>(
                leaf,
                leftOut,
                assumed,
                said -> said.map(OptionalDouble::of).orElse(OptionalDouble.empty()),
                said -> said.isPresent() ? Optional.of(said.getAsDouble()) : Optional.empty());
    }

    @Override
    public O read(JsonFields in, String name) {
        return wrap.apply(in.ask(name).map(node -> leaf.value(in, name, node)));
    }

    @Override
    public Optional<JsonNode> write(String path, O value, Map<String, String> notes) {
        return open.apply(value).flatMap(said -> leaf.write(path, said, notes));
    }

    @Override
    public void faults(Place at, O value, List<Fault> found) {
        open.apply(value).ifPresent(said -> leaf.faults(at, said, found));
    }

    @Override
    public String get(Target at, O value) {
        return open.apply(value).map(said -> leaf.get(at, said)).orElse(NOT_SAID);
    }

    @Override
    public O set(Target at, O value) {
        at.end();
        return wrap.apply(
                at.text().equals(NOT_SAID) ? Optional.empty() : Optional.of(leaf.parse(at.path(), at.text())));
    }

    @Override
    public void walk(String path, O value, Walker walker) {
        walker.field(path, open.apply(value).map(leaf::text));
    }

    @Override
    public void known(String path, Field<?, ?> row, Consumer<DesignField> rows) {
        rows.accept(leaf.described(path, row, Optional.of(leftOut), assumed));
    }
}
