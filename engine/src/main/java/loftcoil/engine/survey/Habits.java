package loftcoil.engine.survey;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import loftcoil.engine.design.Use;
import loftcoil.engine.fault.Allowed;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.pipe.ResourceTable;

/**
 * Who lives there and what they do with hot water, as people say it. What happens on some days of a week counts on every day by its
 * share, since every day of a year is marched with the same draws.
 *
 * @param people how many live there; 1 to 50
 * @param washesAWeek washes under a low shower or in a tub, each person, a week; 0 to 14
 * @param bathsAWeek full baths, each person, a week; 0 to 14
 * @param dishesADay times a day that dishes are washed by hand, for the whole house; 0 to 6
 * @param loadsAWeek machine loads a week that take hot water from the tank, for the whole house; 0 to 30
 * @param sink name of the tap for hands and dishes
 * @param tub name of the tap for washes and baths
 * @param machine name of the tap the machine hangs on
 */
public record Habits(
        int people,
        double washesAWeek,
        double bathsAWeek,
        double dishesADay,
        double loadsAWeek,
        String sink,
        String tub,
        String machine) {

    /** Amounts, hours and temperatures, each with its source. */
    private static final ResourceTable TABLE = ResourceTable.read(Habits.class, "habits.csv");

    private static final double DAYS_A_WEEK = 7;
    private static final Allowed PEOPLE = new Allowed(1, 50, "people");
    private static final Allowed WEEKLY = new Allowed(0, 14, "a week");
    private static final Allowed DAILY = new Allowed(0, 6, "a day");
    private static final Allowed LOADS = new Allowed(0, 30, "a week");

    /**
     * Checks the numbers.
     *
     * @throws RefusedException where one is outside its range; with every fault
     */
    public Habits {
        List<Fault> faults = new ArrayList<>();
        PEOPLE.faultIn("people", people).ifPresent(faults::add);
        WEEKLY.faultIn("washesAWeek", washesAWeek).ifPresent(faults::add);
        WEEKLY.faultIn("bathsAWeek", bathsAWeek).ifPresent(faults::add);
        DAILY.faultIn("dishesADay", dishesADay).ifPresent(faults::add);
        LOADS.faultIn("loadsAWeek", loadsAWeek).ifPresent(faults::add);
        if (!faults.isEmpty()) {
            throw new RefusedException(faults);
        }
    }

    /** The draws of a mean day, in order of time; none of what nobody does. */
    public List<Use> uses() {
        List<Use> uses = new ArrayList<>();
        for (Map<String, String> row : TABLE.rows()) {
            String what = row.getOrDefault("what", "");
            double litres = timesADay(what) * Double.parseDouble(row.getOrDefault("litres", ""));
            if (litres > 0) {
                uses.add(new Use(
                        Double.parseDouble(row.getOrDefault("at_h", "")),
                        Math.round(litres * 10) / 10.0,
                        Double.parseDouble(row.getOrDefault("mixed_C", "")),
                        tap(what)));
            }
        }
        uses.sort(Comparator.comparingDouble(Use::atH));
        return List.copyOf(uses);
    }

    private double timesADay(String what) {
        return switch (what) {
            case "hands in the morning", "hands in the evening" -> people;
            case "dishes at noon", "dishes in the evening" -> dishesADay / 2;
            case "wash" -> people * washesAWeek / DAYS_A_WEEK;
            case "bath" -> people * bathsAWeek / DAYS_A_WEEK;
            case "machine load" -> loadsAWeek / DAYS_A_WEEK;
            default -> throw new IllegalStateException("habits.csv: nobody knows how often " + what);
        };
    }

    private String tap(String what) {
        return switch (what) {
            case "wash", "bath" -> tub;
            case "machine load" -> machine;
            default -> sink;
        };
    }
}
