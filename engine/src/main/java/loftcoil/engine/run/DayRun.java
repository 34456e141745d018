package loftcoil.engine.run;

import java.util.ArrayList;
import java.util.List;
import loftcoil.engine.design.Design;
import loftcoil.engine.fault.Allowed;

/**
 * One day of the system, watched: the fifteenth of a month, after the days before it, in moments a few minutes apart.
 *
 * @param month 1 to 12
 * @param moments what was seen, in the order of the day
 * @param energy the account of the day
 * @param litres what came out of the taps
 */
public record DayRun(int month, List<Moment> moments, EnergyBook energy, Litres litres) {

    private static final int MIDDLE_DAY = 14;
    private static final int EVERY_S = 300;
    private static final int HOUR_S = 3600;

    /** Keeps a copy of the moments. */
    public DayRun {
        moments = List.copyOf(moments);
    }

    /**
     * Runs the middle day of a month, at the usual pace.
     *
     * @param design a design
     * @param month 1 to 12
     * @throws loftcoil.engine.fault.RefusedException where the month is none, or as {@link YearRun#of(Design)}
     */
    public static DayRun of(Design design, int month) {
        return of(design, month, Pace.USUAL);
    }

    /**
     * Runs the middle day of a month.
     *
     * @param design a design
     * @param month 1 to 12
     * @param pace how finely, and how many days before it
     * @throws loftcoil.engine.fault.RefusedException as {@link #of(Design, int)}
     */
    public static DayRun of(Design design, int month, Pace pace) {
        new Allowed(1, 12, "").require("month", month);
        SystemMarch march = new SystemMarch(SystemPlan.of(design, pace, Heatings.of(design)));
        int day = Calendar.firstDay(month) + MIDDLE_DAY;
        for (int before = day - pace.runInDays(); before < day; before++) {
            march.day(before);
        }
        Totals start = march.totals();
        List<Moment> moments = new ArrayList<>();
        int every = Math.max(1, EVERY_S / pace.stepS());
        for (int step = 0; step < pace.stepsPerDay(); step++) {
            march.step(day, step);
            if ((step + 1) % every == 0) {
                moments.add(moment(march, (step + 1) * (double) pace.stepS() / HOUR_S));
            }
        }
        Totals counted = march.totals().since(start);
        return new DayRun(month, moments, counted.book(), counted.litres());
    }

    /** Hours of the day at which it was seen, for plotting. */
    public double[] hours() {
        return moments.stream().mapToDouble(Moment::hour).toArray();
    }

    /**
     * Temperatures through the day at a height in the tank.
     *
     * @param share height as a share of the waterline: 0 the base, 1 the top
     * @return °C at each of {@link #hours}
     * @throws loftcoil.engine.fault.RefusedException where the share is outside 0 to 1 or not a number
     */
    public double[] tankC(double share) {
        double at = new Allowed(0, 1, "").require("share", share);
        return moments.stream()
                .mapToDouble(moment -> {
                    List<Double> layers = moment.layersC();
                    return layers.get((int) Math.min(layers.size() - 1, at * layers.size()));
                })
                .toArray();
    }

    /** Flow of the loop through the day, L/min of cold water, backward negative. */
    public double[] flowLPerMin() {
        return moments.stream().mapToDouble(Moment::flowLPerMin).toArray();
    }

    private static Moment moment(SystemMarch march, double hour) {
        List<Double> layers = new ArrayList<>();
        for (int i = 0; i < march.tank().wet(); i++) {
            layers.add(march.tank().tempC(i));
        }
        return new Moment(hour, layers, march.loopFlowKgPerS() * 60);
    }

    /**
     * The system at a moment.
     *
     * @param hour hour of the day
     * @param layersC temperatures of the tank's layers that hold water, from the base up, °C
     * @param flowLPerMin flow of the loop, taking a litre as a kilogram; backward negative
     */
    public record Moment(double hour, List<Double> layersC, double flowLPerMin) {

        /** Keeps a copy of the layers. */
        public Moment {
            layersC = List.copyOf(layersC);
        }
    }
}
