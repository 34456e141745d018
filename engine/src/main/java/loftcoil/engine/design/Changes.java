package loftcoil.engine.design;

import java.util.List;
import java.util.Map;
import loftcoil.engine.fault.KnownNames;
import loftcoil.engine.fault.RefusedException;

/**
 * The decisions of the course by name, each a change of the design that keeps its levels and legs closed. A change of a part
 * that the design does not have, such as panes or a vent, starts that part from stated usual values.
 */
public final class Changes {

    private static final Map<String, ChangeTable.Entry> ENTRIES = entries();

    private Changes() {}

    /** All names, grouped by the part of the design they change. */
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
     * The value a design has now, as text that {@link #apply} takes; where the design lacks that part, the value it would be
     * started with.
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

    private static ChangeTable.Entry entry(String name) {
        ChangeTable.Entry entry = ENTRIES.get(name);
        if (entry == null) {
            throw new RefusedException(List.of(new KnownNames("change", names()).unknown("change", name)));
        }
        return entry;
    }

    private static Map<String, ChangeTable.Entry> entries() {
        ChangeTable table = new ChangeTable();
        TankChanges.into(table);
        LoopChanges.into(table);
        FireChanges.into(table);
        WindowChanges.into(table);
        SafetyChanges.into(table);
        return table.entries();
    }
}
