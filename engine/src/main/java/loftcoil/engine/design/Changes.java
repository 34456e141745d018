package loftcoil.engine.design;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import loftcoil.engine.fault.KnownNames;
import loftcoil.engine.fault.RefusedException;

/**
 * Changes of a design by name. The decisions of the course keep levels and legs closed, and start a part that the design does not
 * have, such as panes or a vent, from stated usual values. Besides these every field can be changed by its path, such as
 * {@code coldLegs[1].lengthM}; see {@link DesignFields}.
 */
public final class Changes {

    /** The present value of what may be left out and is. */
    public static final String NOT_SAID = Form.NOT_SAID;

    private static final Map<String, ChangeTable.Entry> ENTRIES = entries();

    private Changes() {}

    /** The names of all decisions of the course, grouped by the part of the design they change. */
    public static List<String> names() {
        return List.copyOf(ENTRIES.keySet());
    }

    /**
     * What a change is.
     *
     * @param name one of {@link #names} or the path of a field
     * @throws RefusedException where there is no change of that name
     */
    public static Change describe(String name) {
        return entry(name).change();
    }

    /**
     * The value a design has now, as text that {@link #apply} takes; where the design lacks that part, the value it would be
     * started with, and {@code not said} for what may be left out and is.
     *
     * @throws RefusedException where there is no change of that name
     */
    public static String current(Design design, String name) {
        return entry(name).current().apply(design);
    }

    /**
     * The design with one thing changed; its value is from now on {@link Origin#YOURS}. With the first value of fire or coil that is
     * decided the heat that the example's coil was stated to give is dropped: it is worked out from then on.
     *
     * @param design a design
     * @param name one of {@link #names} or the path of a field
     * @param valueText a number in the change's unit with a decimal point, one of its options, or {@code not said} for a field
     *     that may be left out
     * @throws RefusedException where the name is unknown, the value is no such number or option, or the changed design
     *     has a fault
     */
    public static Design apply(Design design, String name, String valueText) {
        ChangeTable.Entry entry = entry(name);
        Design own = BorrowedHeat.without(design, entry.decides());
        return Origins.decided(own, entry.apply().apply(own, valueText.strip()), entry.decides());
    }

    /**
     * The paths of the fields a change decides, {@code []} for each item of a list; what else moves only follows.
     *
     * @param name one of {@link #names} or the path of a field
     * @throws RefusedException where there is no change of that name
     */
    public static List<String> decides(String name) {
        return entry(name).decides();
    }

    /** The design with one thing changed for a try, so that nothing is said on where its value is from. */
    static Design tried(Design design, String name, String valueText) {
        return entry(name).apply().apply(design, valueText.strip());
    }

    private static ChangeTable.Entry entry(String name) {
        ChangeTable.Entry entry = ENTRIES.get(name);
        if (entry != null) {
            return entry;
        }
        if (name.contains("[]") || name.contains("*") || DesignFields.at(name).isEmpty()) {
            List<String> all = Stream.concat(names().stream(), DesignFields.paths().stream())
                    .toList();
            throw new RefusedException(List.of(new KnownNames("change", all).unknown("change", name)));
        }
        return ChangeTable.field(name, (design, text) -> Followers.set(design, name, text));
    }

    private static Map<String, ChangeTable.Entry> entries() {
        ChangeTable table = new ChangeTable();
        TankChanges.into(table);
        TapChanges.into(table);
        LoopChanges.into(table);
        HeatChanges.into(table);
        SafetyChanges.into(table);
        return table.entries();
    }
}
