package loftcoil.engine.clear;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.DesignFields;
import loftcoil.engine.pipe.Tube;
import loftcoil.engine.pipe.TubeMetal;
import loftcoil.engine.pipe.TubeTable;
import loftcoil.engine.study.NamedValue;
import loftcoil.engine.words.Measure;
import loftcoil.engine.words.MeasureKind;
import loftcoil.engine.words.Numeral;
import loftcoil.engine.words.Sentences;

/** The kinds of steps that levers go in: a grid that can be built, sizes that can be bought, something left out or put in. */
final class Steps {

    static final Sentences SENTENCES = Sentences.read(Steps.class, "clear.properties");

    /** Outer diameters that are on the shelf, mm; common practice, no source. */
    private static final List<Integer> SOLD_MM = List.of(15, 22, 28, 35, 42, 54);

    /** Wall of what is bought for the legs, at least, and for the coil, mm. */
    private static final double LEG_WALL_MM = 0.9;

    private static final double COIL_WALL_MM = 1.2;

    /** Outer diameter that a loop built anew has at least, mm. */
    private static final double LEAST_OUTER_MM = 21.5;

    /** And at most: so much water in it that it is slow to set off, and nobody bends it, mm. */
    private static final double MOST_OUTER_MM = 43;

    private static final double MM_PER_M = 1000;
    private static final double ROUNDING = 1e-6;

    /** Of a number in a change: fewer than the rounding of sums needs. */
    private static final int DECIMALS = 4;

    private Steps() {}

    /**
     * A number moved along a grid.
     *
     * @param code of the words, with the holes {@code by} and {@code to}
     * @param kind what it measures
     * @param byStep length of a step, less than 0 downward
     * @param most how many steps at most
     * @param sold whether only multiples of a step are sold; otherwise the steps begin where it is now
     */
    record Grid(String code, MeasureKind kind, double byStep, int most, boolean sold) {

        Grid(String code, MeasureKind kind, double byStep, int most) {
            this(code, kind, byStep, most, false);
        }

        /** The steps of the change of that name, from what stands now. */
        Lever.Ladder of(String change, ToDoubleFunction<Design> now) {
            return from(change, design -> OptionalDouble.of(now.applyAsDouble(design)));
        }

        /** The same where the design may lack it. */
        Lever.Ladder from(String change, Function<Design, OptionalDouble> now) {
            return design -> now.apply(design).stream()
                    .boxed()
                    .flatMap(value -> IntStream.rangeClosed(1, most)
                            .mapToDouble(number -> start(value) + number * byStep)
                            .filter(to -> !(to < 0))
                            .mapToObj(to -> step(change, value, to)))
                    .toList();
        }

        /** The last multiple on this side of the first step. */
        private double start(double value) {
            return sold ? byStep * Math.floor(value / byStep + ROUNDING) : value;
        }

        private Lever.Step step(String change, double from, double to) {
            return new Lever.Step(
                    List.of(new NamedValue(change, Numeral.typedTo(DECIMALS, to))),
                    SENTENCES.say(code, "by", new Measure(Math.abs(to - from), kind), "to", new Measure(to, kind)));
        }
    }

    /** One field or named change brought to one value; none where it has it already. */
    static Lever.Ladder to(String code, String change, String value) {
        return design -> List.of(new Lever.Step(List.of(new NamedValue(change, value)), SENTENCES.say(code)));
    }

    /** The same, only where a field has one of these values now. */
    static Lever.Ladder instead(String code, String path, List<String> of, String value) {
        return design -> text(design, path).filter(of::contains).isPresent()
                ? to(code, path, value).of(design)
                : List.of();
    }

    /** Wider tubes for all pipes that one change names. */
    static Lever.Ladder wider(String code, String change, Function<Design, String> now, boolean inFire) {
        return design -> wider(now.apply(design), inFire).stream()
                .map(tube -> new Lever.Step(
                        List.of(new NamedValue(change, tube)),
                        SENTENCES.say(code, "tube", tube, "now", now.apply(design))))
                .toList();
    }

    /** Tubes with a wider bore than one, of its series where that has a name, else of its metal; one for each outer diameter. */
    static List<String> wider(String name, boolean inFire) {
        Tube now = TubeTable.find(name).orElseThrow();
        double wallMm = inFire ? COIL_WALL_MM : LEG_WALL_MM;
        TreeMap<Double, Tube> byOuter = new TreeMap<>();
        series(name, now).stream()
                .filter(tube -> tube.boreM() > now.boreM() + ROUNDING)
                .filter(tube -> tube.wallM() * MM_PER_M > wallMm - ROUNDING)
                .sorted(Comparator.comparingDouble(Tube::wallM).reversed())
                .forEach(tube -> byOuter.put(tube.outerM(), tube));
        return byOuter.values().stream().map(Tube::name).limit(3).toList();
    }

    /** Tubes for a loop that is built anew, coil and pipes alike, as that of the coil now: each outer diameter from 22 to 42 mm, with a wall for the fire. */
    static List<String> forLoop(String coilNow) {
        TreeMap<Double, Tube> byOuter = new TreeMap<>();
        series(coilNow, TubeTable.find(coilNow).orElseThrow()).stream()
                .filter(tube -> tube.outerM() * MM_PER_M > LEAST_OUTER_MM && tube.outerM() * MM_PER_M < MOST_OUTER_MM)
                .filter(tube -> tube.wallM() * MM_PER_M > COIL_WALL_MM - ROUNDING)
                .sorted(Comparator.comparingDouble(Tube::wallM).reversed())
                .forEach(tube -> byOuter.put(tube.outerM(), tube));
        return byOuter.values().stream().map(Tube::name).toList();
    }

    private static List<Tube> series(String name, Tube now) {
        int cut = name.lastIndexOf(' ');
        boolean named = TubeTable.names().contains(name);
        List<String> names = new ArrayList<>();
        if (named) {
            TubeTable.names().stream()
                    .filter(other -> other.startsWith(name.substring(0, cut + 1)) && other.lastIndexOf(' ') == cut)
                    .forEach(names::add);
        } else if (now.metal() == TubeMetal.COPPER) {
            TubeTable.names().stream()
                    .filter(other -> other.startsWith("EN1057 "))
                    .forEach(names::add);
        } else {
            SOLD_MM.forEach(mm -> names.add(mm + "x1.5 " + now.metal().code()));
        }
        boolean millimetres = !named || name.startsWith("EN1057 ");
        return names.stream()
                .map(other -> TubeTable.find(other).orElseThrow())
                .filter(tube -> !millimetres || SOLD_MM.contains((int) Math.round(tube.outerM() * MM_PER_M)))
                .toList();
    }

    /** Every fitting of these kinds taken out of these parts; part and kind are patterns. */
    static Lever.Ladder without(String code, String part, String kind) {
        return design -> {
            List<NamedValue> out = DesignFields.of(design).stream()
                    .filter(value -> value.path().matches(part + "\\.fittings\\.(" + kind + ")"))
                    .filter(value ->
                            value.text().filter(text -> !text.equals("0")).isPresent())
                    .map(value -> new NamedValue(value.path(), "0"))
                    .toList();
            return out.isEmpty() ? List.of() : List.of(new Lever.Step(out, SENTENCES.say(code)));
        };
    }

    /** What stands in a field as text; empty where nothing does. */
    static Optional<String> text(Design design, String path) {
        return DesignFields.of(design).stream()
                .filter(value -> value.path().equals(path))
                .findFirst()
                .flatMap(DesignFields.Value::text);
    }

    /** What stands in a field as a number; empty where nothing does. */
    static OptionalDouble value(Design design, String path) {
        return text(design, path)
                .map(text -> OptionalDouble.of(Double.parseDouble(text)))
                .orElse(OptionalDouble.empty());
    }
}
