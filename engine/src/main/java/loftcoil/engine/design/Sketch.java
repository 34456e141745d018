package loftcoil.engine.design;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.json.JsonFields;
import loftcoil.engine.json.JsonText;

/**
 * A design that is still being told: each value by itself is in its range, and nothing else is asked of it yet. Ports may stand above
 * the rim and pipes may end in the air until {@link #faults} is empty and {@link #design} gives what can be computed.
 *
 * @param told what is told so far, with where each value is from
 */
public record Sketch(Design told) {

    private static final JsonText TEXT = new JsonText(40_000);

    /** A sketch that goes on from a design; a stated heat that is still the example's gives way where fire or coil are told. */
    public static Sketch of(Design design) {
        return new Sketch(BorrowedHeat.settled(design));
    }

    /** A sketch that starts from an example dwelling: until somebody says otherwise every value is borrowed from it. */
    public static Sketch from(Design example) {
        return new Sketch(example.borrowed());
    }

    /**
     * The same with more values told. With the first of fire or coil a heat that is still the example's is dropped, so that it is worked
     * out. Of a part that is not there yet, and of which nothing may be assumed, all that must stand has to
     * be told at once.
     *
     * @param texts by path of a field, such as {@code tank.baseM}: a number in the field's unit, one of its options, or {@link
     *     Changes#NOT_SAID} where it may be left out
     * @param origin where they are from: yours where they were measured or chosen, assumed where they were guessed
     * @throws RefusedException where there is no such field, a text does not fit or one is missing; with every fault
     */
    public Sketch with(Map<String, String> texts, Origin origin) {
        List<Fault> faults = new ArrayList<>();
        Design own = BorrowedHeat.without(told, texts.keySet());
        Design changed = own;
        for (Map.Entry<String, String> text : texts.entrySet()) {
            try {
                changed = DesignTable.sketched(
                        changed, text.getKey(), text.getValue().strip());
            } catch (RefusedException refused) {
                faults.addAll(refused.faults());
            }
        }
        missing(changed, texts.keySet(), faults);
        if (!faults.isEmpty()) {
            throw new RefusedException(faults.stream().map(FaultHints::hinted).toList());
        }
        Design decided = Origins.decided(own, changed, List.copyOf(texts.keySet()));
        Map<String, Origin> origins = new HashMap<>();
        if (origin != Origin.YOURS) {
            texts.keySet().forEach(path -> origins.put(path, origin));
        }
        return new Sketch(noted(decided, origins));
    }

    /** What has to be told of a part that was started with nothing in it. */
    private void missing(Design changed, Set<String> told, List<Fault> faults) {
        Set<String> before = DesignFields.texts(this.told).keySet();
        DesignFields.texts(changed).forEach((path, text) -> {
            boolean untold = !before.contains(path) && !told.contains(path);
            DesignFields.at(path)
                    .filter(field -> untold && field.leftOut().isEmpty())
                    .filter(field -> DesignTable.get(this.told, path).equals(Form.NOT_SAID))
                    .ifPresent(field -> faults.add(new Fault(path, "missing", field.allowed(), "")));
        });
    }

    /** The same with other pipes between coil and tank; the origins go by path, such as {@code hotLegs[0].lengthM}. */
    public Sketch withLegs(List<Leg> cold, List<Leg> hot, Map<String, Origin> origins) {
        Design changed =
                DesignTable.with(DesignTable.with(told, DesignTable.COLD_LEGS, cold), DesignTable.HOT_LEGS, hot);
        return new Sketch(noted(without(changed, "coldLegs", "hotLegs"), origins));
    }

    /**
     * The same with other taps, all of one origin; draws from a tap that is no longer there are dropped.
     *
     * @param trunk the pipe that several of them share; empty where each has its own from the tank
     * @throws RefusedException where a value is out of its range by itself; with every fault
     */
    public Sketch withTaps(List<Tap> taps, Optional<Trunk> trunk, Origin origin) {
        List<String> names = taps.stream().map(Tap::name).toList();
        List<Use> kept =
                told.use().stream().filter(use -> names.contains(use.tap())).toList();
        Design tapped = DesignTable.with(DesignTable.with(told, DesignTable.TAPS, taps), DesignTable.TRUNK, trunk);
        Design changed = without(DesignTable.with(tapped, DesignTable.USE, kept), "taps", "trunk");
        Map<String, Origin> origins = new HashMap<>(Map.of("taps", origin));
        trunk.ifPresent(shared -> origins.put("trunk", origin));
        return inRange(noted(changed, origins));
    }

    /**
     * The same with other draws, all of one origin.
     *
     * @throws RefusedException where a value is out of its range by itself; with every fault
     */
    public Sketch withUse(List<Use> use, Origin origin) {
        Design changed = DesignTable.with(told, DesignTable.USE, use);
        return inRange(noted(without(changed, "use"), Map.of("use", origin)));
    }

    /** The same without panes. */
    public Sketch withoutWindow() {
        return new Sketch(without(DesignTable.with(told, DesignTable.WINDOW, Optional.empty()), "window"));
    }

    /**
     * The same after a design of the same house was changed: each value that stood here as it did there becomes what it is there now, with
     * where that is from; what was told otherwise here stays.
     *
     * @param before the design before its change
     * @param after the design now
     */
    public Sketch following(Design before, Design after) {
        Design merged = DesignTable.merged(before, told, after);
        return new Sketch(BorrowedHeat.settled(Origins.merged(merged, before, told, after)));
    }

    /** What stands in the way of computing it; empty where nothing does. */
    public List<Fault> faults() {
        return DesignFaults.of(told);
    }

    /**
     * The design.
     *
     * @throws RefusedException where it cannot be computed yet, with every fault
     */
    public Design design() {
        return told.checked();
    }

    /** How many of its values are of each origin. */
    public Grounds grounds() {
        return Grounds.of(told);
    }

    /** The sketch as JSON, of the same shape as a design. */
    public String json() {
        return DesignJson.write(told);
    }

    /**
     * Reads what {@link #json} wrote.
     *
     * @throws RefusedException where a field is missing, unknown or out of its range by itself; with every fault
     */
    public static Sketch read(String json) {
        JsonFields in = JsonFields.noted(TEXT.object("sketch", json));
        Map<String, Origin> origins = Origins.read(in);
        Design told = DesignTable.TABLE.read(in).noted(in.notes(), origins);
        if (!in.faults().isEmpty()) {
            throw new RefusedException(in.faults());
        }
        return inRange(BorrowedHeat.settled(told.noted(told.notes(), Origins.trimmed(told, origins))));
    }

    /** A sketch that can be read again as it is written. */
    private static Sketch inRange(Design told) {
        List<Fault> faults = new ArrayList<>();
        DesignTable.TABLE.faults(Place.TOP, told, faults);
        if (!faults.isEmpty()) {
            throw new RefusedException(faults);
        }
        return new Sketch(told);
    }

    private static Design noted(Design design, Map<String, Origin> said) {
        Map<String, Origin> origins = new HashMap<>(design.origins());
        origins.putAll(said);
        return design.noted(design.notes(), Origins.trimmed(design, origins));
    }

    /** The design without a word on where the values of these parts are from. */
    private static Design without(Design design, String... parts) {
        Map<String, Origin> origins = new HashMap<>(design.origins());
        for (String part : parts) {
            origins.keySet()
                    .removeIf(path -> path.equals(part) || path.startsWith(part + "[") || path.startsWith(part + "."));
        }
        return design.noted(design.notes(), origins);
    }
}
