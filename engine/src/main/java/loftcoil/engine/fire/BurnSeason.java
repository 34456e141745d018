package loftcoil.engine.fire;

import java.time.Month;
import java.util.List;
import loftcoil.engine.fault.Allowed;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.fault.RefusedException;

/**
 * When a fire burns over a year of 365 days: the same hours every day of some months.
 *
 * @param litForH hours lit a day, 0 to 24
 * @param months months in which it is lit, 1 to 12, each once
 */
public record BurnSeason(double litForH, List<Integer> months) {

    private static final Allowed HOURS = new Allowed(0, 24, "h");
    private static final Allowed MONTH = new Allowed(1, 12, "");

    /**
     * Keeps a copy of the months and checks them.
     *
     * @throws RefusedException where a value is outside its range or a month stands twice
     */
    public BurnSeason {
        HOURS.require("litForH", litForH);
        months = List.copyOf(months);
        for (int i = 0; i < months.size(); i++) {
            MONTH.require("months[" + i + "]", months.get(i));
            if (months.indexOf(months.get(i)) != i) {
                throw new RefusedException(
                        List.of(new Fault("months[" + i + "]", months.get(i).toString(), "each month once", "")));
            }
        }
    }

    /** Days with a fire. */
    public int days() {
        return months.stream().mapToInt(month -> Month.of(month).length(false)).sum();
    }

    /** Hours lit over the year. */
    public double hours() {
        return litForH * days();
    }

    /**
     * Wood burnt over the year.
     *
     * @param burnKgPerH burn rate in kg/h, 0.1 to 20
     * @return kg of moist wood
     * @throws RefusedException where the rate is outside its range or not a number
     */
    public double woodKg(double burnKgPerH) {
        return Burn.RATE.require("burnKgPerH", burnKgPerH) * hours();
    }
}
