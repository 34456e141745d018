package loftcoil.engine.sun;

/**
 * One day's sun spread over its steps: global by {@link DaySplit}, diffuse by {@link Erbs}, both scaled so that the day's
 * sums are exact. Where the diffuse of the mean day would exceed the global (near sunrise in dull weather) it is held to the
 * global and the rest of the day takes up what was cut.
 */
final class MeanDay {

    private final SunYear year;
    private final int first;
    private final int steps;
    private final double sunsetDeg;

    MeanDay(SunYear year, double latitudeDeg, int day) {
        this.year = year;
        this.steps = year.stepsPerDay();
        this.first = day * steps;
        double declination = year.sun(first + steps / 2).declinationDeg();
        this.sunsetDeg = Extraterrestrial.sunsetHourAngleDeg(latitudeDeg, declination);
    }

    /**
     * Writes the day's steps in W/m².
     *
     * @param globalWh the day's sum in Wh/m²
     * @param global the year's array to write to
     * @param diffuse the year's array to write to
     */
    void fill(double globalWh, double[] global, double[] diffuse) {
        double outsideWh = year.outsideDailyWhPerM2(first / steps);
        if (!(globalWh > 0 && outsideWh > 0)) {
            return;
        }
        for (int i = first; i < first + steps; i++) {
            double height = Math.max(0, year.sun(i).cosZenith());
            diffuse[i] = height;
            global[i] = height * Math.max(0, DaySplit.peaking(year.sun(i).hourAngleDeg(), sunsetDeg));
        }
        if (sum(global) == 0) {
            // At the pole on the day the sun comes or goes, noon says it stays down while another hour sees it.
            System.arraycopy(diffuse, first, global, first, steps);
        }
        double scale = globalWh / (sum(global) * year.stepHours());
        for (int i = first; i < first + steps; i++) {
            global[i] *= scale;
        }
        double fraction = Erbs.monthlyDiffuseFraction(Math.min(1, globalWh / outsideWh), sunsetDeg);
        scaleDiffuse(fraction * globalWh / year.stepHours(), global, diffuse);
    }

    /** Finds the scale at which the diffuse, held to the global, sums to what is wanted. Each round holds more steps. */
    private void scaleDiffuse(double wanted, double[] global, double[] heights) {
        double scale = 0;
        for (int round = 0; round < steps; round++) {
            double held = 0;
            double free = 0;
            for (int i = first; i < first + steps; i++) {
                if (scale * heights[i] >= global[i]) {
                    held += global[i];
                } else {
                    free += heights[i];
                }
            }
            double next = free > 0 ? (wanted - held) / free : scale;
            if (next <= scale * (1 + 1e-15)) {
                break;
            }
            scale = next;
        }
        for (int i = first; i < first + steps; i++) {
            heights[i] = Math.min(scale * heights[i], global[i]);
        }
    }

    private double sum(double[] values) {
        double sum = 0;
        for (int i = first; i < first + steps; i++) {
            sum += values[i];
        }
        return sum;
    }
}
