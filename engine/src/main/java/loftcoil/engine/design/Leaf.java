package loftcoil.engine.design;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.NumericNode;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import loftcoil.engine.design.DesignField.Assumed;
import loftcoil.engine.fault.Allowed;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.fault.KnownNames;
import loftcoil.engine.fault.PlainText;
import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.json.JsonFields;
import loftcoil.engine.words.Numeral;

/**
 * One value that must be there.
 *
 * @param wanted what is wanted, in words, where it is missing
 * @param placeholder stands in where it is missing or of the wrong kind, so that reading goes on
 * @param reader takes it from JSON
 * @param writer makes it JSON
 * @param judge notes what is wrong with it
 * @param shower makes it text
 * @param parser takes it from the text of a change
 * @param limits what is allowed
 */
record Leaf<V>(
        String wanted,
        V placeholder,
        Reader<V> reader,
        Function<V, JsonNode> writer,
        Judge<V> judge,
        Function<V, String> shower,
        BiFunction<String, String, V> parser,
        Limits limits)
        implements Form<V> {

    private static final int MONTHS = 12;
    private static final double WHOLE_BELOW = 1e15;
    private static final JsonNodeFactory JSON = JsonNodeFactory.instance;

    /** Takes a value from JSON. */
    interface Reader<V> {
        V read(JsonFields in, String name, JsonNode node);
    }

    /** Notes what is wrong with a value at a place. */
    interface Judge<V> {
        void judge(Place at, V value, List<Fault> found);
    }

    /** What is allowed, as {@link DesignField} tells it. */
    record Limits(FieldUnit unit, String symbol, Optional<Allowed> range, List<String> options, String words) {

        static Limits number(Allowed range, FieldUnit unit) {
            return new Limits(unit, range.unit(), Optional.of(range), List.of(), range.toString());
        }

        static Limits oneOf(List<String> options) {
            return new Limits(FieldUnit.PLAIN, "", Optional.empty(), options, "one of " + String.join(", ", options));
        }

        static Limits words(String words) {
            return new Limits(FieldUnit.PLAIN, "", Optional.empty(), List.of(), words);
        }
    }

    /** A number in a range. */
    static Leaf<Double> number(double low, double high, FieldUnit unit) {
        return number(new Allowed(low, high, unit.symbol()), unit, Leaf::inRange);
    }

    /** A number in a unit that only this field has. */
    static Leaf<Double> number(double low, double high, String unit) {
        return number(new Allowed(low, high, unit), FieldUnit.PLAIN, Leaf::inRange);
    }

    /** A number that {@link GeometryFaults} judges, since what is allowed follows from others; at most this range. */
    static Leaf<Double> fitting(Allowed most, FieldUnit unit) {
        return number(most, unit, range -> (at, value, found) -> {});
    }

    private static Leaf<Double> number(Allowed range, FieldUnit unit, Function<Allowed, Judge<Double>> judge) {
        return new Leaf<>(
                "a number",
                Double.NaN,
                JsonFields::number,
                Leaf::node,
                judge.apply(range),
                Numeral::typed,
                (path, text) -> number(path, text, range),
                Limits.number(range, unit));
    }

    private static Judge<Double> inRange(Allowed range) {
        return (at, value, found) -> judge(range, at, value, found);
    }

    private static void judge(Allowed range, Place at, double value, List<Fault> found) {
        if (!(value >= range.low() && value <= range.high())) {
            range.faultIn(at.path(), value).ifPresent(found::add);
        }
    }

    /** A whole number in a range. */
    static Leaf<Integer> whole(int low, int high, FieldUnit unit) {
        Allowed range = new Allowed(low, high, unit.symbol());
        return new Leaf<>(
                "a whole number",
                Integer.MIN_VALUE,
                JsonFields::whole,
                JSON::numberNode,
                (at, value, found) -> judge(range, at, value, found),
                Object::toString,
                (path, text) -> whole(path, text, range),
                Limits.number(range, unit));
    }

    /** A name that the builder gives. */
    static Leaf<String> name() {
        Judge<String> judge = (at, value, found) -> {
            if (value.isBlank()) {
                found.add(new Fault(at.path(), "no text", "a name", ""));
            }
            if (!PlainText.isLine(value)) {
                found.add(PlainText.fault(at.path(), value));
            }
        };
        return text(judge, Limits.words("a name"));
    }

    /** A name that must stand elsewhere in the design, where it is looked up. */
    static Leaf<String> nameOf(String what) {
        return text((at, value, found) -> {}, Limits.words("the name of " + what));
    }

    /** A name of a table. */
    static Leaf<String> known(Predicate<String> known, List<String> names, BiFunction<String, String, Fault> unknown) {
        Judge<String> judge = (at, value, found) -> {
            if (!known.test(value)) {
                found.add(unknown.apply(at.path(), value));
            }
        };
        return text(judge, Limits.oneOf(names));
    }

    /** A name of a short list. */
    static Leaf<String> known(KnownNames names) {
        return known(Set.copyOf(names.names())::contains, names.names(), names::unknown);
    }

    private static Leaf<String> text(Judge<String> judge, Limits limits) {
        BiFunction<String, String, String> parser = (path, text) -> {
            List<Fault> found = new ArrayList<>();
            judge.judge(Place.TOP.field(path), text, found);
            refuse(found);
            return text;
        };
        return new Leaf<>("text", "", JsonFields::text, JSON::textNode, judge, Function.identity(), parser, limits);
    }

    /** A value of a list with codes. */
    static <E extends Enum<E> & Coded> Leaf<E> code(String what, Class<E> type, E placeholder) {
        KnownNames names = new KnownNames(what, Coded.codes(type));
        return new Leaf<>(
                "text",
                placeholder,
                (in, name, node) -> code(in, name, node, text -> Coded.find(type, text), names)
                        .orElse(placeholder),
                value -> JSON.textNode(value.code()),
                (at, value, found) -> {},
                Coded::code,
                (path, text) -> Coded.find(type, text).orElseThrow(() -> refused(names.unknown(path, text))),
                new Limits(FieldUnit.PLAIN, "", Optional.empty(), names.names(), "one of " + Coded.inWords(type)));
    }

    private static <E> Optional<E> code(
            JsonFields in, String name, JsonNode node, Function<String, Optional<E>> find, KnownNames names) {
        String text = in.text(name, node);
        Optional<E> value = find.apply(text);
        if (value.isEmpty() && node.isTextual()) {
            in.fault(names.unknown(in.at(name), text));
        }
        return value;
    }

    /** Yes or no. */
    static Leaf<Boolean> flag() {
        String words = "true or false";
        return new Leaf<>(
                words,
                false,
                JsonFields::flag,
                JSON::booleanNode,
                (at, value, found) -> {},
                Object::toString,
                (path, text) -> {
                    if (!text.equals("true") && !text.equals("false")) {
                        throw refused(new Fault(path, "\"" + PlainText.cut(text) + "\"", words, ""));
                    }
                    return text.equals("true");
                },
                new Limits(FieldUnit.PLAIN, "", Optional.empty(), List.of("true", "false"), words));
    }

    /** A list of one leaf. */
    private static <E> Leaf<List<E>> list(Leaf<E> item, Judge<List<E>> judge, Limits limits) {
        return new Leaf<>(
                JsonFields.LIST,
                List.of(),
                (in, name, node) -> items(in, name, node, item),
                values -> {
                    ArrayNode out = JSON.arrayNode();
                    values.forEach(value -> out.add(item.writer().apply(value)));
                    return out;
                },
                (at, values, found) -> {
                    judge.judge(at, values, found);
                    for (int i = 0; i < values.size(); i++) {
                        item.judge().judge(at.item(i), values.get(i), found);
                    }
                },
                values -> values.stream().map(item.shower()).collect(Collectors.joining(", ")),
                (path, text) -> text.isBlank()
                        ? List.of()
                        : List.of(text.split(",", -1)).stream()
                                .map(one -> item.parse(path, one.strip()))
                                .toList(),
                limits);
    }

    private static <E> List<E> items(JsonFields in, String name, JsonNode node, Leaf<E> item) {
        List<E> values = new ArrayList<>();
        List<JsonNode> nodes = in.items(name, node);
        for (int i = 0; i < nodes.size(); i++) {
            values.add(item.value(in, name + "[" + i + "]", nodes.get(i)));
        }
        return values;
    }

    /** Twelve numbers, January first. */
    static Leaf<List<Double>> twelve(double low, double high, String unit) {
        Leaf<Double> month = number(low, high, unit);
        Allowed range = new Allowed(low, high, unit);
        Judge<List<Double>> judge = (at, values, found) -> {
            if (values.size() != MONTHS) {
                found.add(new Fault(at.path(), values.size() + " values", "12 values, January first", ""));
            }
        };
        return list(
                month,
                judge,
                new Limits(
                        FieldUnit.PLAIN,
                        unit,
                        Optional.of(range),
                        List.of(),
                        "12 values, January first, each " + range));
    }

    /** Months of the year, each once. */
    static Leaf<List<Integer>> months() {
        Leaf<Integer> month = whole(1, MONTHS, FieldUnit.COUNT);
        Judge<List<Integer>> judge = (at, values, found) -> {
            Set<Integer> seen = new HashSet<>();
            for (int i = 0; i < values.size(); i++) {
                if (!seen.add(values.get(i))) {
                    found.add(new Fault(at.item(i).path(), values.get(i).toString(), "each month once", ""));
                }
            }
        };
        return list(
                month,
                judge,
                new Limits(FieldUnit.COUNT, "", month.limits().range(), List.of(), "months, 1 to 12, each once"));
    }

    /** Values of a list with codes, any number of them. */
    static <E extends Enum<E> & Coded> Leaf<List<E>> codes(String what, Class<E> type, E placeholder) {
        Leaf<E> one = code(what, type, placeholder);
        return list(one, (at, values, found) -> {}, Limits.words("any of " + Coded.inWords(type)));
    }

    V value(JsonFields in, String name, JsonNode node) {
        return reader.read(in, name, node);
    }

    String text(V value) {
        return shower.apply(value);
    }

    V parse(String path, String text) {
        return parser.apply(path, text);
    }

    String unitAfterNumber() {
        return limits.symbol().isEmpty() ? "" : " " + limits.symbol();
    }

    @Override
    public V read(JsonFields in, String name) {
        return in.needed(name, wanted).map(node -> value(in, name, node)).orElse(placeholder);
    }

    @Override
    public Optional<JsonNode> write(String path, V value, Map<String, String> notes) {
        return Optional.of(writer.apply(value));
    }

    @Override
    public void faults(Place at, V value, List<Fault> found) {
        judge.judge(at, value, found);
    }

    @Override
    public String get(Target at, V value) {
        at.end();
        return text(value);
    }

    @Override
    public V set(Target at, V value) {
        at.end();
        return parse(at.path(), at.text());
    }

    @Override
    public void walk(String path, V value, Walker walker) {
        walker.field(path, Optional.of(text(value)));
    }

    @Override
    public void known(String path, Field<?, ?> row, Consumer<DesignField> rows) {
        rows.accept(described(path, row, Optional.empty(), Optional.empty()));
    }

    DesignField described(String path, Field<?, ?> row, Optional<String> leftOut, Optional<Assumed> assumed) {
        return new DesignField(
                path,
                row.label(),
                row.help(),
                limits.symbol(),
                limits.unit().kind(),
                limits.unit().inKind(),
                limits.range(),
                limits.options(),
                limits.words(),
                leftOut,
                assumed);
    }

    /** The number in a text of a change. */
    static double number(String path, String text, Allowed range) {
        double value;
        try {
            value = Double.parseDouble(Numeral.hyphened(text));
        } catch (NumberFormatException noNumber) {
            String why = "a number with a decimal point is wanted";
            throw refused(new Fault(path, "\"" + PlainText.cut(text) + "\"", range.toString(), why));
        }
        return range.require(path, value);
    }

    /** The whole number in a text of a change. */
    static int whole(String path, String text, Allowed range) {
        double value = number(path, text, range);
        if (value != Math.rint(value)) {
            throw refused(new Fault(path, text, range.toString(), "a whole number is wanted"));
        }
        return (int) value;
    }

    private static RefusedException refused(Fault fault) {
        return new RefusedException(List.of(fault));
    }

    private static void refuse(List<Fault> found) {
        if (!found.isEmpty()) {
            throw new RefusedException(found);
        }
    }

    /** Whole numbers without a decimal point, as a person writes them; a negative zero keeps its sign. */
    private static NumericNode node(double value) {
        boolean whole = value == Math.rint(value) && Math.abs(value) < WHOLE_BELOW && !isNegativeZero(value);
        return whole ? JSON.numberNode((long) value) : JSON.numberNode(value);
    }

    private static boolean isNegativeZero(double value) {
        return value == 0 && 1 / value < 0;
    }
}
