package loftcoil.engine.sun;

import java.util.List;
import loftcoil.engine.fault.Allowed;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.fault.RefusedException;

/**
 * What is known of a place's weather: twelve monthly means, January first.
 *
 * @param globalKWhPerM2Day sun on the horizontal, mean day of the month, in kWh/m² a day, 0 to 12
 * @param meanAirC mean outside air in °C, -50 to 45
 */
public record Climate(List<Double> globalKWhPerM2Day, List<Double> meanAirC) {

    /** Daily sun accepted, in kWh/m². Whether a place can have it at all is checked against the sun by {@link SkyYear}. */
    public static final Allowed GLOBAL = new Allowed(0, 12, "kWh/m² day");

    /** Mean air temperatures accepted. */
    public static final Allowed MEAN_AIR = new Allowed(-50, 45, "°C");

    /**
     * Copies and checks both lists.
     *
     * @throws RefusedException with all faults, where a list has not twelve numbers or one is outside its range
     */
    public Climate {
        globalKWhPerM2Day = List.copyOf(globalKWhPerM2Day);
        meanAirC = List.copyOf(meanAirC);
        FaultList faults = new FaultList();
        check(faults, "globalKWhPerM2Day", globalKWhPerM2Day, GLOBAL);
        check(faults, "meanAirC", meanAirC, MEAN_AIR);
        faults.refuseIfAny();
    }

    private static void check(FaultList faults, String path, List<Double> values, Allowed allowed) {
        if (values.size() != DayOfYear.MONTHS) {
            faults.add(new Fault(path, values.size() + " values", "12 values", "one for each month, January first"));
        }
        for (int i = 0; i < values.size(); i++) {
            faults.check(path + "[" + i + "]", values.get(i), allowed);
        }
    }
}
