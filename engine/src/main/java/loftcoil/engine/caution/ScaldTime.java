package loftcoil.engine.caution;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.NavigableMap;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.stream.Collectors;
import loftcoil.engine.fault.Allowed;
import loftcoil.engine.pipe.ResourceTable;

/**
 * How long hot water takes to burn skin through its whole thickness. Between the published points the logarithm of the time is
 * drawn straight over temperature. Points for adults: of US CPSC publication 5098 and the burn-prevention leaflets, at each
 * temperature the shortest; for infants a trade leaflet (soft); all read as restated in public.
 */
public final class ScaldTime {

    private static final Map<Skin, NavigableMap<Double, Double>> POINTS = read();

    private ScaldTime() {}

    /**
     * Time of contact to a full-thickness burn.
     *
     * @param skin whose skin
     * @param waterC temperature of the water in °C, 0 to 110
     * @return s; empty below the coolest published point, where it takes longer than that one; above the hottest one the time
     *     of that one, which it is sure to undercut
     * @throws loftcoil.engine.fault.RefusedException where the temperature is outside its range or not a number
     */
    public static OptionalDouble seconds(Skin skin, double waterC) {
        new Allowed(0, 110, "°C").require("waterC", waterC);
        NavigableMap<Double, Double> points = POINTS.getOrDefault(skin, new TreeMap<>());
        Map.Entry<Double, Double> cooler = points.floorEntry(waterC);
        Map.Entry<Double, Double> hotter = points.higherEntry(waterC);
        if (cooler == null) {
            return OptionalDouble.empty();
        }
        if (hotter == null) {
            return OptionalDouble.of(cooler.getValue());
        }
        double part = (waterC - cooler.getKey()) / (hotter.getKey() - cooler.getKey());
        return OptionalDouble.of(cooler.getValue() * Math.pow(hotter.getValue() / cooler.getValue(), part));
    }

    /** The hottest published point, °C; hotter water burns faster than {@link #seconds} says. */
    static double hottestKnownC(Skin skin) {
        NavigableMap<Double, Double> points = POINTS.getOrDefault(skin, new TreeMap<>());
        return points.isEmpty() ? Double.POSITIVE_INFINITY : points.lastKey();
    }

    private static Map<Skin, NavigableMap<Double, Double>> read() {
        List<Map<String, String>> rows =
                ResourceTable.read(ScaldTime.class, "scald-times.csv").rows();
        return Arrays.stream(Skin.values()).collect(Collectors.toMap(skin -> skin, skin -> points(rows, skin)));
    }

    private static NavigableMap<Double, Double> points(List<Map<String, String>> rows, Skin skin) {
        NavigableMap<Double, Double> points = new TreeMap<>();
        String name = skin.toString().toLowerCase(Locale.ROOT);
        rows.stream()
                .filter(row -> name.equals(row.get("skin")))
                .forEach(row -> points.put(number(row, "temp_C"), number(row, "seconds")));
        return points;
    }

    private static double number(Map<String, String> row, String column) {
        return Double.parseDouble(row.getOrDefault(column, ""));
    }
}
