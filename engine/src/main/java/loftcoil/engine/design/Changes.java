package loftcoil.engine.design;

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
import loftcoil.engine.pipe.LaggingTable;
import loftcoil.engine.pipe.TubeTable;

/** The decisions of the course by name, each a change of the design that keeps its levels and legs closed. */
public final class Changes {

    private record Entry(Change change, Function<Design, String> current, BiFunction<Design, String, Design> apply) {}

    private static final Map<String, Entry> ENTRIES = entries();

    private Changes() {}

    /** All names, in the order of the course. */
    public static List<String> names() {
        return List.copyOf(ENTRIES.keySet());
    }

    /**
     * What a change is.
     *
     * @throws RefusedException where there is no change of that name
     */
    public static Change describe(String name) {
        return entry(name).change();
    }

    /**
     * The value a design has now, as text that {@link #apply} takes.
     *
     * @throws RefusedException where there is no change of that name
     */
    public static String current(Design design, String name) {
        return entry(name).current().apply(design);
    }

    /**
     * The design with one thing changed.
     *
     * @param design a design
     * @param name one of {@link #names}
     * @param valueText a number in the change's unit with a decimal point, or one of its options
     * @throws RefusedException where the name is unknown, the value is no such number or option, or the changed design
     *     has a fault
     */
    public static Design apply(Design design, String name, String valueText) {
        return entry(name).apply().apply(design, valueText.strip());
    }

    private static Entry entry(String name) {
        Entry entry = ENTRIES.get(name);
        if (entry == null) {
            throw new RefusedException(List.of(new KnownNames("change", names()).unknown("change", name)));
        }
        return entry;
    }

    private static Map<String, Entry> entries() {
        Table table = new Table();
        table.number("tank.baseM", "Tank base above the floor", DesignRanges.LEVEL)
                .as(design -> design.tank().baseM(), Design::withTankBaseM);
        table.number("coil.inletM", "Coil inlet above the floor", DesignRanges.LEVEL)
                .as(design -> design.coil().inletM(), Design::withCoilInletM);
        table.choice("loop.tube", "Tube of every leg and the coil", TubeTable.names())
                .as(design -> design.coil().tube(), Design::withLoopTube);
        table.choice("coil.tube", "Tube of the coil", TubeTable.names())
                .as(design -> design.coil().tube(), Design::withCoilTube);
        table.number("coil.lengthM", "Length of tube in the coil", DesignRanges.COIL_LENGTH)
                .as(design -> design.coil().lengthM(), Design::withCoilLengthM);
        table.number("coil.heatKW", "Heat the coil gives the water", DesignRanges.HEAT)
                .as(design -> design.coil().heatKW().orElse(0), Design::withCoilHeatKW);
        table.number("loop.elbowsPerLeg", "Sharp 90° elbows in each leg", DesignRanges.FITTINGS)
                .as(
                        design -> design.hotLegs().get(0).fittings().getOrDefault("elbow90", 0),
                        (design, count) -> design.withElbowsPerLeg((int) Math.rint(count)));
        table.number("loop.laggingMm", "Thickness of lagging on every leg", DesignRanges.LAGGING)
                .as(Changes::laggingMm, Design::withLoopLaggingMm);
        table.choice("loop.laggingMaterial", "Lagging of every leg", LaggingTable.names())
                .as(Changes::laggingMaterial, Design::withLoopLaggingMaterial);
        table.number("site.altitudeM", "Altitude of the site", DesignRanges.ALTITUDE)
                .as(design -> design.site().altitudeM(), Design::withAltitudeM);
        return table.entries;
    }

    private static double laggingMm(Design design) {
        return design.hotLegs().get(0).lagging().map(LaggingChoice::thicknessMm).orElse(0.0);
    }

    private static String laggingMaterial(Design design) {
        return design.hotLegs().get(0).lagging().map(LaggingChoice::material).orElse("none");
    }

    /** Collects the entries; reads as one line a change. */
    private static final class Table {
        private final Map<String, Entry> entries = new LinkedHashMap<>();

        Numbered number(String name, String label, Allowed range) {
            Change change = new Change(name, label, range.unit(), Optional.of(range), List.of());
            return (current, apply) -> entries.put(
                    name,
                    new Entry(
                            change,
                            design -> shown(current.apply(design).doubleValue()),
                            (design, text) -> apply.apply(design, number(change, text))));
        }

        Chosen choice(String name, String label, List<String> options) {
            Change change = new Change(name, label, "", Optional.empty(), options);
            return (current, apply) -> entries.put(
                    name, new Entry(change, current, (design, text) -> apply.apply(design, option(change, text))));
        }

        private static double number(Change change, String text) {
            Allowed range = change.range().orElseThrow();
            double value;
            try {
                value = Double.parseDouble(text);
            } catch (NumberFormatException noNumber) {
                String why = "a number with a decimal point is wanted";
                throw new RefusedException(
                        List.of(new Fault(change.name(), "\"" + text + "\"", range.toString(), why)));
            }
            return range.require(change.name(), value);
        }

        private static String option(Change change, String text) {
            if (!change.options().contains(text)) {
                throw new RefusedException(
                        List.of(new KnownNames("option", change.options()).unknown(change.name(), text)));
            }
            return text;
        }

        private static String shown(double value) {
            return value == Math.rint(value) && Math.abs(value) < 1e9
                    ? Long.toString((long) value)
                    : Double.toString(value);
        }
    }

    private interface Numbered {
        void as(Function<Design, Number> current, BiFunction<Design, Double, Design> apply);
    }

    private interface Chosen {
        void as(Function<Design, String> current, BiFunction<Design, String, Design> apply);
    }
}
