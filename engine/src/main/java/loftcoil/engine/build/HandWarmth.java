package loftcoil.engine.build;

import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import loftcoil.engine.pipe.ResourceTable;

/** What a hand says of bare metal. A thermometer says more: hands differ, and a hot pipe burns before it warns. */
public final class HandWarmth {

    /** From here a pipe feels warm: a little above the skin of the hand, °C; from memory, see the table. */
    public static final double WARM_C = 35;

    private static final NavigableMap<Double, String> FEELS = read();

    private HandWarmth() {}

    /**
     * How bare metal feels.
     *
     * @param tempC its temperature in °C; below −50 it feels as at −50
     * @return words without a full stop, such as {@code warm}
     */
    public static String words(double tempC) {
        Map.Entry<Double, String> feel = FEELS.floorEntry(tempC);
        return (feel == null ? FEELS.firstEntry() : feel).getValue();
    }

    private static NavigableMap<Double, String> read() {
        NavigableMap<Double, String> feels = new TreeMap<>();
        for (Map<String, String> row :
                ResourceTable.read(HandWarmth.class, "touch.csv").rows()) {
            feels.put(Double.parseDouble(row.getOrDefault("from_C", "")), row.getOrDefault("words", ""));
        }
        return feels;
    }
}
