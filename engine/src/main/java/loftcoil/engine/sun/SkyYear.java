package loftcoil.engine.sun;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import loftcoil.engine.fault.Allowed;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.words.Numeral;

/**
 * A place's sun, sky and air in steps through one common year, made from twelve monthly means. Each month's mean is kept to
 * rounding. Every day is a mean day: no single clear or dull day is made up, so what depends on runs of bad weather is not
 * in here; Duffie and Beckman, section 2.13, call this the average day.
 *
 * <p>Clock time of the place without summer time; minute 0 is the first of 1 January. Looking up allocates nothing.
 * Immutable.
 */
public final class SkyYear {

    /** Minutes in the year. */
    public static final int MINUTES = 525_600;

    /** Clearest monthly mean accepted, of the sun outside the air (common practice, no source). */
    public static final double CLEAREST_MONTH = 0.85;

    private static final double CLEAREST_DAY = 0.9;
    private static final Allowed STEP = new Allowed(1, 60, "min");

    private final SunYear sun;
    private final Place place;
    private final double[] globalWPerM2;
    private final double[] diffuseWPerM2;
    private final double[] airC;
    private final double[] clearness;
    private final double[] meanAirC;

    private SkyYear(SkyYear as, Place place) {
        this.place = place;
        this.sun = as.sun;
        this.globalWPerM2 = as.globalWPerM2;
        this.diffuseWPerM2 = as.diffuseWPerM2;
        this.airC = as.airC;
        this.clearness = as.clearness;
        this.meanAirC = as.meanAirC;
    }

    private SkyYear(Place place, SunYear sun, double[] clearness, double[] meanAirC) {
        this.place = place;
        this.sun = sun;
        this.clearness = clearness;
        this.meanAirC = meanAirC;
        this.globalWPerM2 = new double[sun.steps()];
        this.diffuseWPerM2 = new double[sun.steps()];
        this.airC = new double[sun.steps()];
        for (int day = 0; day < DayOfYear.COUNT; day++) {
            double globalWh = clearness[day] * sun.outsideDailyWhPerM2(day);
            new MeanDay(sun, place.latitudeDeg(), day).fill(globalWh, globalWPerM2, diffuseWPerM2);
        }
        Arrays.setAll(airC, step -> {
            int day = sun.dayOf(step);
            return AirDay.airC(meanAirC[day], clearness[day], sun.hourOf(step));
        });
    }

    /**
     * Computes the year.
     *
     * @param place where
     * @param climate its twelve monthly means
     * @param stepMinutes length of a step in minutes, a divisor of 60
     * @throws RefusedException where the step does not divide the hour, or a month has more sun than
     *     {@link #CLEAREST_MONTH} of what shines on the place outside the air
     */
    public static SkyYear of(Place place, Climate climate, int stepMinutes) {
        STEP.require("stepMinutes", stepMinutes);
        if (60 % stepMinutes != 0) {
            throw new RefusedException(java.util.List.of(new Fault(
                    "stepMinutes",
                    Integer.toString(stepMinutes),
                    "1, 2, 3, 4, 5, 6, 10, 12, 15, 20, 30 or 60 min",
                    "steps must fill the hour")));
        }
        SunYear sun = new SunYear(place, stepMinutes);
        double[] outside = sun.outsideDailyWhPerM2();
        double[] clearness = new MeanKeepingCurve(0, CLEAREST_DAY, outside).through(monthlyClearness(climate, outside));
        double[] even = new double[DayOfYear.COUNT];
        Arrays.fill(even, 1);
        double[] air = new MeanKeepingCurve(-100, 100, even)
                .through(climate.meanAirC().stream()
                        .mapToDouble(Double::doubleValue)
                        .toArray());
        return new SkyYear(place, sun, clearness, air);
    }

    /**
     * The same place under other weather, every day of the year alike in it.
     *
     * @param weather clear days bring what {@link ClearSun} says, and no less than a mean one
     */
    public SkyYear under(Weather weather) {
        return switch (weather) {
            case MEAN -> this;
            case CLEAR ->
                new SkyYear(place, sun, clearDays(), changed(meanAirC, mean -> mean + Weather.CLEAR.warmerK()));
            case DULL -> new SkyYear(place, sun, changed(clearness, mean -> mean * Weather.DULL_SHARE), meanAirC);
        };
    }

    private double[] clearDays() {
        double[] days = new double[DayOfYear.COUNT];
        for (int step = 0; step < sun.steps(); step++) {
            days[sun.dayOf(step)] +=
                    ClearSun.globalWPerM2(sun.sun(step).cosZenith(), place.altitudeM()) * sun.stepHours();
        }
        Arrays.setAll(days, day -> {
            double outsideWh = sun.outsideDailyWhPerM2(day);
            double clear = outsideWh > 0 ? Math.min(CLEAREST_DAY, days[day] / outsideWh) : 0;
            return Math.max(clear, clearness[day]);
        });
        return days;
    }

    private static double[] changed(double[] days, DoubleUnaryOperator change) {
        return Arrays.stream(days).map(change).toArray();
    }

    /**
     * The same sun, sky and air at another altitude, whose thinner air counts on cloudless days and between the panes alone.
     *
     * @throws RefusedException where the altitude is out of range
     */
    public SkyYear atAltitudeM(double altitudeM) {
        return new SkyYear(this, new Place(place.latitudeDeg(), place.longitudeDeg(), altitudeM, place.utcOffsetH()));
    }

    /** Coldest air of the year, °C. */
    double coldestAirC() {
        return Arrays.stream(airC).min().orElseThrow();
    }

    /** Warmest air of the year, °C. */
    double warmestAirC() {
        return Arrays.stream(airC).max().orElseThrow();
    }

    /** Where it is. */
    public Place place() {
        return place;
    }

    /**
     * Beam and diffuse on the horizontal.
     *
     * @param minuteOfYear 0 to 525 599
     * @return W/m², the mean of the step the minute is in; 0 at night
     * @throws ArrayIndexOutOfBoundsException where the minute is outside the year
     */
    public double globalWPerM2(int minuteOfYear) {
        return globalWPerM2[step(minuteOfYear)];
    }

    /**
     * Diffuse on the horizontal.
     *
     * @param minuteOfYear 0 to 525 599
     * @return W/m², the mean of the step the minute is in; 0 at night
     * @throws ArrayIndexOutOfBoundsException where the minute is outside the year
     */
    public double diffuseWPerM2(int minuteOfYear) {
        return diffuseWPerM2[step(minuteOfYear)];
    }

    /**
     * Outside air.
     *
     * @param minuteOfYear 0 to 525 599
     * @return °C, at the middle of the step the minute is in
     * @throws ArrayIndexOutOfBoundsException where the minute is outside the year
     */
    public double airC(int minuteOfYear) {
        return airC[step(minuteOfYear)];
    }

    /** Step of a minute; Java divides towards zero, so a small negative minute must not pass for minute 0. */
    int step(int minuteOfYear) {
        return Math.floorDiv(minuteOfYear, sun.stepMinutes());
    }

    SunYear sun() {
        return sun;
    }

    SkyLight light(int step) {
        return new SkyLight(globalWPerM2[step], diffuseWPerM2[step], sun.normalWPerM2(step));
    }

    private static double[] monthlyClearness(Climate climate, double[] outsideDailyWh) {
        double[] outsideKWh = new double[DayOfYear.MONTHS];
        for (int day = 0; day < outsideDailyWh.length; day++) {
            outsideKWh[DayOfYear.month(day)] += outsideDailyWh[day] / 1000;
        }
        double[] clearness = new double[DayOfYear.MONTHS];
        FaultList faults = new FaultList();
        for (int month = 0; month < clearness.length; month++) {
            double most = outsideKWh[month] / DayOfYear.length(month);
            double given = climate.globalKWhPerM2Day().get(month);
            clearness[month] = most > 0 ? given / most : 0;
            if (given > CLEAREST_MONTH * most) {
                faults.add(tooMuchSun(month, given, CLEAREST_MONTH * most, otherHalf(climate, outsideKWh)));
            }
        }
        faults.refuseIfAny();
        return clearness;
    }

    /** Whether the year would do half a year on. */
    private static boolean otherHalf(Climate climate, double[] outsideKWh) {
        return IntStream.range(0, DayOfYear.MONTHS).allMatch(month -> {
            int later = (month + DayOfYear.MONTHS / 2) % DayOfYear.MONTHS;
            double most = outsideKWh[later] / DayOfYear.length(later);
            return climate.globalKWhPerM2Day().get(month) <= CLEAREST_MONTH * most;
        });
    }

    private static Fault tooMuchSun(int month, double given, double most, boolean otherHalf) {
        return new Fault(
                "globalKWhPerM2Day[" + month + "]",
                Numeral.typed(given),
                "0 to " + Numeral.typedTo(2, most) + " kWh/m² day",
                "more than a clear month gives at this latitude; "
                        + (otherHalf
                                ? "it looks like a year of the other half of the earth, or a latitude without its sign"
                                : "kWh, not MJ, a day, not a month, and January first"));
    }
}
