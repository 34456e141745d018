package loftcoil.engine.use;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.pipe.ResourceTable;
import loftcoil.engine.tank.WaterHeat;
import loftcoil.engine.water.Water;

/**
 * A day of draw-offs that water heaters are tested with in the EU: load profiles of Commission Regulation (EU) No 814/2013,
 * annex III, table 1 (the same in No 812/2013, annex VII). Nothing is drawn before 07:00.
 *
 * @param name name of the profile, such as {@code S}
 * @param tappings its draw-offs in order of time
 */
public record TappingCycle(String name, List<Tapping> tappings) {

    /** Temperature of the cold water of the regulation, °C. */
    public static final double COLD_C = 10;

    private static final double J_PER_KWH = 3.6e6;
    private static final ResourceTable TABLE = ResourceTable.read(TappingCycle.class, "tapping-cycles.csv");

    /** Keeps a copy of the draw-offs. */
    public TappingCycle {
        tappings = List.copyOf(tappings);
    }

    /** The cycle of a name, exactly as in {@link #names}. */
    public static Optional<TappingCycle> find(String name) {
        List<Tapping> tappings = new ArrayList<>();
        for (Map<String, String> row : TABLE.rows()) {
            if (name.equals(row.get("cycle"))) {
                tappings.add(tapping(row));
            }
        }
        return tappings.isEmpty() ? Optional.empty() : Optional.of(new TappingCycle(name, tappings));
    }

    /**
     * The cycle of a name.
     *
     * @param path where the name stands, for the refusal
     * @param name exactly as in {@link #names}
     * @throws RefusedException where there is no such cycle
     */
    public static TappingCycle require(String path, String name) {
        return find(name)
                .orElseThrow(() -> new RefusedException(List.of(
                        new Fault(path, name, "one of " + String.join(", ", names()), "no such tapping cycle"))));
    }

    /** All names. */
    public static List<String> names() {
        return TABLE.rows().stream()
                .map(row -> row.getOrDefault("cycle", ""))
                .distinct()
                .toList();
    }

    /** Useful heat of the day in kWh: the sum of the draw-offs. */
    public double sumKWh() {
        return tappings.stream().mapToDouble(Tapping::kWh).sum();
    }

    /**
     * The cycle as draw-offs of mixed water: each at its peak temperature, of the volume that carries its heat above the cold
     * water of the regulation.
     *
     * @param tap name of the tap they are all drawn from
     */
    public List<DrawOff> drawOffs(String tap) {
        return tappings.stream().map(one -> drawOff(one, tap)).toList();
    }

    private static DrawOff drawOff(Tapping one, String tap) {
        double kg = one.kWh() * J_PER_KWH / (WaterHeat.jPerKg(one.peakC()) - WaterHeat.jPerKg(COLD_C));
        return new DrawOff(one.atH(), 1000 * kg / Water.densityKgPerM3(one.peakC()), one.peakC(), tap);
    }

    private static Tapping tapping(Map<String, String> row) {
        double usefulC = Double.parseDouble(row.getOrDefault("useful_C", ""));
        String peak = row.getOrDefault("peak_C", "");
        return new Tapping(
                hours(row.getOrDefault("at", "")),
                Double.parseDouble(row.getOrDefault("kWh", "")),
                Double.parseDouble(row.getOrDefault("flow_L_min", "")),
                usefulC,
                peak.isEmpty() ? usefulC : Double.parseDouble(peak));
    }

    /** Hours of a clock time such as 07:30. */
    private static double hours(String clock) {
        LocalTime time = LocalTime.parse(clock);
        return time.toSecondOfDay() / 3600.0;
    }
}
