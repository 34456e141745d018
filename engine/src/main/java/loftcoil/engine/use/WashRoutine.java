package loftcoil.engine.use;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.pipe.ResourceTable;

/**
 * A washing day in a small dwelling, to begin from: hands, dishes, and a wash in a tub for each person. The amounts stand in a
 * table with their sources; change them to what you do.
 */
public final class WashRoutine {

    private static final ResourceTable TABLE = ResourceTable.read(WashRoutine.class, "wash-routine.csv");

    private WashRoutine() {}

    /**
     * The draw-offs of a day, in order of time.
     *
     * @param people how many live there, 1 to 50: what is done for each person is done that often, a quarter of an hour apart
     * @param sink name of the tap hands and dishes are washed at
     * @param tub name of the tap people wash at
     * @throws RefusedException where the number is outside its range
     */
    public static List<DrawOff> day(int people, String sink, String tub) {
        int count = (int) Demand.PEOPLE.require("people", people);
        List<DrawOff> day = new ArrayList<>();
        for (Map<String, String> row : TABLE.rows()) {
            int times = "yes".equals(row.get("each_person")) ? count : 1;
            for (int i = 0; i < times; i++) {
                day.add(drawOff(row, i, "tub".equals(row.get("tap")) ? tub : sink));
            }
        }
        day.sort(Comparator.comparingDouble(DrawOff::atH));
        return List.copyOf(day);
    }

    private static DrawOff drawOff(Map<String, String> row, int turn, String tap) {
        double atH = Double.parseDouble(row.getOrDefault("at_h", "")) + turn * 0.25;
        return new DrawOff(
                atH % 24,
                Double.parseDouble(row.getOrDefault("litres", "")),
                Double.parseDouble(row.getOrDefault("mixed_C", "")),
                tap);
    }
}
