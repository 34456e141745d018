package loftcoil.engine.sun;

import java.util.Arrays;

/**
 * A smooth year of days whose weighted mean in each month is the given one: the repeated three-day smoothing with
 * correction of Rymes and Myers (2001), Solar Energy 71, 225. Left to run it settles on the curve whose second difference
 * is constant within each month; here the sweeps are fixed in number and the last step restores each mean exactly while
 * the curve stays between its bounds.
 */
final class MeanKeepingCurve {

    /** Three-day smoothing wanders the root of two thirds of the sweeps: 40 days here, more than the longest month. */
    private static final int SWEEPS = 2400;

    private final double low;
    private final double high;
    private final double[] weights;
    private final double[] monthWeights = new double[DayOfYear.MONTHS];

    /**
     * @param low no day falls below this
     * @param high no day rises above this
     * @param weights each of the 365 days' weight in its month's mean, 0 or more; a month may weigh nothing
     */
    MeanKeepingCurve(double low, double high, double[] weights) {
        this.low = low;
        this.high = high;
        this.weights = Arrays.copyOf(weights, DayOfYear.COUNT);
        for (int day = 0; day < DayOfYear.COUNT; day++) {
            monthWeights[DayOfYear.month(day)] += this.weights[day];
        }
    }

    /** The 365 days; a month of no weight is bridged smoothly from its neighbours. Means must lie within the bounds. */
    double[] through(double[] monthMeans) {
        double[] days = new double[DayOfYear.COUNT];
        double overall = meanOfWeighed(monthMeans);
        Arrays.setAll(days, day -> {
            int month = DayOfYear.month(day);
            return monthWeights[month] > 0 ? monthMeans[month] : overall;
        });
        double[] smoothed = new double[DayOfYear.COUNT];
        for (int sweep = 0; sweep < SWEEPS; sweep++) {
            smooth(days, smoothed);
            shift(smoothed, monthMeans, days);
        }
        restore(days, monthMeans);
        return days;
    }

    private double meanOfWeighed(double[] monthMeans) {
        double sum = 0;
        int months = 0;
        for (int month = 0; month < monthMeans.length; month++) {
            if (monthWeights[month] > 0) {
                sum += monthMeans[month];
                months++;
            }
        }
        return months > 0 ? sum / months : 0;
    }

    private static void smooth(double[] days, double[] into) {
        int last = days.length - 1;
        into[0] = (days[last] + days[0] + days[1]) * (1.0 / 3);
        for (int day = 1; day < last; day++) {
            into[day] = (days[day - 1] + days[day] + days[day + 1]) * (1.0 / 3);
        }
        into[last] = (days[last - 1] + days[last] + days[0]) * (1.0 / 3);
    }

    private void shift(double[] days, double[] monthMeans, double[] into) {
        int from = 0;
        for (int month = 0; month < DayOfYear.MONTHS; month++) {
            int to = from + DayOfYear.length(month);
            double sum = 0;
            for (int day = from; day < to; day++) {
                sum += weights[day] * days[day];
            }
            double missing = monthWeights[month] > 0 ? monthMeans[month] - sum / monthWeights[month] : 0;
            for (int day = from; day < to; day++) {
                into[day] = Math.max(low, Math.min(high, days[day] + missing));
            }
            from = to;
        }
    }

    /** Moves each day the same share of its way to the bound: the mean comes right and no bound is passed. */
    private void restore(double[] days, double[] monthMeans) {
        double[] missing = missing(days, monthMeans);
        double[] meanNow = new double[DayOfYear.MONTHS];
        Arrays.setAll(meanNow, month -> monthMeans[month] - missing[month]);
        for (int day = 0; day < days.length; day++) {
            int month = DayOfYear.month(day);
            double lack = missing[month];
            double bound = lack > 0 ? high : low;
            double room = Math.abs(bound - meanNow[month]);
            if (lack != 0 && room > 0) {
                days[day] += (bound - days[day]) * Math.min(1, Math.abs(lack) / room);
            }
        }
    }

    private double[] missing(double[] days, double[] monthMeans) {
        double[] sums = new double[DayOfYear.MONTHS];
        for (int day = 0; day < days.length; day++) {
            sums[DayOfYear.month(day)] += weights[day] * days[day];
        }
        double[] missing = new double[DayOfYear.MONTHS];
        for (int month = 0; month < missing.length; month++) {
            missing[month] = monthWeights[month] > 0 ? monthMeans[month] - sums[month] / monthWeights[month] : 0;
        }
        return missing;
    }
}
