package loftcoil.engine.survey;

import java.util.ArrayList;
import java.util.List;
import loftcoil.engine.design.Monthly;
import loftcoil.engine.fault.Allowed;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.sun.Extraterrestrial;

/**
 * Sun and air over a year where nobody has a climate table: from latitude, how each season's sky is remembered, and the warmest and the
 * coldest month. The sun is that outside the air times 0.25 and half the share of sunny hours (Ångström and Prescott with the
 * coefficients of FAO Irrigation and Drainage Paper 56, 1998, equations 35 and 36, for places without coefficients of their own); the
 * air swings like a cosine, a month behind the sun. By the spread of published coefficients sun may be a quarter off in either direction, air some 2 K between the two months.
 *
 * @param latitudeDeg latitude, degrees, north positive; −66 to 66
 * @param winter sky of the three coldest months
 * @param spring sky of the three months after them
 * @param summer sky of the three warmest months
 * @param autumn sky of the three months after those
 * @param warmestC mean of the warmest month, °C; −20 to 45
 * @param coldestC mean of the coldest month, °C; −50 to 45, not above the warmest
 */
public record ClimateEstimate(
        double latitudeDeg, Sky winter, Sky spring, Sky summer, Sky autumn, double warmestC, double coldestC) {

    private static final double UNDER_CLOUD = 0.25;
    private static final double IN_SUN = 0.5;
    private static final double MJ_PER_KWH = 3.6;
    private static final int MONTHS = 12;
    private static final int HALF_YEAR = 6;

    /** The day of each month whose sun outside the air is the month's mean; Duffie and Beckman, table 1.6.1 (after Klein). */
    private static final int[] MEAN_DAYS = {17, 47, 75, 105, 135, 162, 198, 228, 258, 288, 318, 344};

    /**
     * Checks the numbers.
     *
     * @throws RefusedException where one is outside its range; with every fault
     */
    public ClimateEstimate {
        List<Fault> faults = new ArrayList<>();
        new Allowed(-66, 66, "degrees").faultIn("latitudeDeg", latitudeDeg).ifPresent(faults::add);
        new Allowed(-20, 45, "°C").faultIn("warmestC", warmestC).ifPresent(faults::add);
        new Allowed(-50, Math.min(45, warmestC), "°C")
                .faultIn("coldestC", coldestC)
                .ifPresent(faults::add);
        if (!faults.isEmpty()) {
            throw new RefusedException(faults);
        }
    }

    /** The twelve months, January first, rounded as a table would have them. */
    public Monthly monthly() {
        List<Double> sun = new ArrayList<>();
        List<Double> air = new ArrayList<>();
        for (int month = 0; month < MONTHS; month++) {
            double outside = Extraterrestrial.dailyMJPerM2(latitudeDeg, MEAN_DAYS[month]) / MJ_PER_KWH;
            sun.add(rounded(sunShare(sky(month).sunnyShare()) * outside, 100));
            double turned = 2 * Math.PI * (month - warmestMonth()) / MONTHS;
            air.add(rounded((warmestC + coldestC) / 2 + (warmestC - coldestC) / 2 * Math.cos(turned), 10));
        }
        return new Monthly(sun, air);
    }

    /**
     * Share of the sun outside the air that comes to the ground.
     *
     * @param sunnyShare share of the hours of daylight in which the sun shines, 0 to 1
     */
    static double sunShare(double sunnyShare) {
        return UNDER_CLOUD + IN_SUN * sunnyShare;
    }

    /** July in the north, January in the south; from 0. */
    private int warmestMonth() {
        return latitudeDeg >= 0 ? HALF_YEAR : 0;
    }

    /** December to February are winter in the north. */
    private Sky sky(int month) {
        int sinceDecember = (month + 1) % MONTHS;
        int sinceWinter = latitudeDeg >= 0 ? sinceDecember : (sinceDecember + HALF_YEAR) % MONTHS;
        return List.of(winter, spring, summer, autumn).get(sinceWinter / 3);
    }

    private static double rounded(double value, double parts) {
        return Math.round(value * parts) / parts;
    }
}
