package loftcoil.engine.supply;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import loftcoil.engine.constant.Constants;
import loftcoil.engine.pipe.ResourceTable;

/**
 * Pressure an appliance's inlet valve needs to open and to fill in time. Read your own machine's plate or papers: they differ.
 *
 * @param name what it is
 * @param leastKPa least pressure at the inlet over the air outside, kPa
 * @param source where the number comes from
 */
public record InletNeed(String name, double leastKPa, String source) {

    private static final List<InletNeed> ALL =
            ResourceTable.read(InletNeed.class, "appliance-inlets.csv").rows().stream()
                    .map(InletNeed::of)
                    .toList();

    /** All inlets of the table. */
    public static List<InletNeed> all() {
        return ALL;
    }

    /** The inlet of a name, exactly as in {@link #all}. */
    public static Optional<InletNeed> find(String name) {
        return ALL.stream().filter(need -> need.name().equals(name)).findFirst();
    }

    /**
     * Whether the head there is will do. Compared is the static pressure: the valve has it when it is to open. While it fills the
     * pressure is less, so a machine that just passes may still time out.
     *
     * @param flow what the tap it hangs on does
     */
    public InletVerdict against(TapFlow flow) {
        double spare = flow.staticKPa() - leastKPa;
        return spare >= 0 ? new InletVerdict.Enough(spare) : new InletVerdict.TooLittle(-spare, -spare / KPA_PER_M);
    }

    private static final double KPA_PER_M = Constants.GRAVITY_M_PER_S2 * 0.9997;

    private static InletNeed of(Map<String, String> row) {
        return new InletNeed(
                row.getOrDefault("name", ""),
                Double.parseDouble(row.getOrDefault("least_kPa", "")),
                row.getOrDefault("source", ""));
    }
}
