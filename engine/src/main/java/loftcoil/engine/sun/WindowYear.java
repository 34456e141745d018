package loftcoil.engine.sun;

import loftcoil.engine.fault.Allowed;
import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.gas.Atmosphere;

/**
 * One square metre of window before the tank through a year: what the tank gains from the sun and what it loses. Computed
 * once; looking up allocates nothing, so a march may ask every minute. Immutable.
 *
 * <p>The gain is what the tank's face takes up plus what the warmed panes spare it (Duffie and Beckman, section 6.4's
 * network taken as linear at 50 °C tank and 10 °C air). The loss is that of panes in the dark; the panes' own heat, a few
 * kJ/(m² K), is left out.
 */
public final class WindowYear {

    private static final Allowed MONTH = new Allowed(1, 12, "");

    private final SkyYear sky;
    private final double[] absorbedWPerM2;
    private final double[] tiltedWPerM2;
    private final boolean[] shutAtStepOfDay;
    private final WindowLossTable openLoss;
    private final WindowLossTable shutLoss;

    private WindowYear(SkyYear sky, Glazing window) {
        this.sky = sky;
        SunYear sun = sky.sun();
        absorbedWPerM2 = new double[sun.steps()];
        tiltedWPerM2 = new double[sun.steps()];
        shutAtStepOfDay = new boolean[sun.stepsPerDay()];
        for (int step = 0; step < shutAtStepOfDay.length; step++) {
            shutAtStepOfDay[step] = window.shutter().isShutAt(sun.hourOf(step));
        }
        WindowLoss loss =
                new WindowLoss(window, Atmosphere.pressurePa(sky.place().altitudeM()));
        fill(window, new Gain(window, loss.inwardShares()));
        double coldestC = sky.coldestAirC();
        double warmestC = sky.warmestAirC();
        openLoss = new WindowLossTable(
                (surfaceC, airC) -> loss.open(surfaceC, airC).wPerM2(), coldestC, warmestC);
        boolean everShut = window.shutter().shutForH() > 0;
        shutLoss = everShut
                ? new WindowLossTable(
                        (surfaceC, airC) -> loss.shut(surfaceC, airC).wPerM2(), coldestC, warmestC)
                : openLoss;
    }

    /**
     * Computes the year.
     *
     * @param sky the place's sun, sky and air
     * @param window the window
     */
    public static WindowYear of(SkyYear sky, Glazing window) {
        return new WindowYear(sky, window);
    }

    /**
     * What the tank gains from the sun for each square metre of window.
     *
     * @param minuteOfYear 0 to 525 599
     * @return W/m²; 0 at night and behind the closed shutter
     * @throws ArrayIndexOutOfBoundsException where the minute is outside the year
     */
    public double absorbedWPerM2(int minuteOfYear) {
        return absorbedWPerM2[sky.step(minuteOfYear)];
    }

    /**
     * What falls on the window from outside, shutter or not.
     *
     * @param minuteOfYear 0 to 525 599
     * @return W/m²; 0 at night
     * @throws ArrayIndexOutOfBoundsException where the minute is outside the year
     */
    public double tiltedWPerM2(int minuteOfYear) {
        return tiltedWPerM2[sky.step(minuteOfYear)];
    }

    /**
     * Outside air.
     *
     * @param minuteOfYear 0 to 525 599
     * @return °C
     * @throws ArrayIndexOutOfBoundsException where the minute is outside the year
     */
    public double airC(int minuteOfYear) {
        return sky.airC(minuteOfYear);
    }

    /**
     * Whether the shutter is closed.
     *
     * @param minuteOfYear 0 to 525 599
     */
    public boolean isShut(int minuteOfYear) {
        return shutAtStepOfDay[sky.step(minuteOfYear) % shutAtStepOfDay.length];
    }

    /**
     * What the tank loses at a minute of the year, by that minute's air and shutter.
     *
     * @param minuteOfYear 0 to 525 599
     * @param surfaceC temperature of the tank's face in °C, 0 to 110
     * @return W/m²; negative where the outside warms the tank
     * @throws RefusedException where the temperature is outside its range or not a number
     * @throws ArrayIndexOutOfBoundsException where the minute is outside the year
     */
    public double lossAtMinuteWPerM2(int minuteOfYear, double surfaceC) {
        return (isShut(minuteOfYear) ? shutLoss : openLoss).at(surfaceC, airC(minuteOfYear));
    }

    /**
     * What the tank loses with the shutter open.
     *
     * @param surfaceC temperature of the tank's face in °C, 0 to 110
     * @param airC outside air in °C, -60 to 60
     * @return W/m²; negative where the outside warms the tank
     * @throws RefusedException where either is outside its range or not a number
     */
    public double lossWPerM2(double surfaceC, double airC) {
        return openLoss.at(surfaceC, airC);
    }

    /**
     * Sun on the window, mean day of a month.
     *
     * @param month 1 to 12
     * @return kWh/m² a day
     * @throws RefusedException where the month is outside its range
     */
    public double tiltedKWhPerM2Day(int month) {
        return meanDay(tiltedWPerM2, month);
    }

    /**
     * Sun gained by the tank, mean day of a month.
     *
     * @param month 1 to 12
     * @return kWh/m² a day
     * @throws RefusedException where the month is outside its range
     */
    public double absorbedKWhPerM2Day(int month) {
        return meanDay(absorbedWPerM2, month);
    }

    private void fill(Glazing window, Gain gain) {
        SunYear sun = sky.sun();
        double albedo = window.surroundings().albedo();
        for (int step = 0; step < absorbedWPerM2.length; step++) {
            SunAngles angles = sun.sun(step);
            if (angles.cosZenith() > 0) {
                TiltedLight light = HdkrSky.on(window.facing(), angles, sky.light(step), albedo);
                tiltedWPerM2[step] = light.totalWPerM2();
                boolean shut = shutAtStepOfDay[step % shutAtStepOfDay.length];
                absorbedWPerM2[step] = shut ? 0 : gain.wPerM2(light, angles);
            }
        }
    }

    private double meanDay(double[] wPerM2, int month) {
        MONTH.require("month", month);
        SunYear sun = sky.sun();
        double sum = 0;
        for (int step = 0; step < wPerM2.length; step++) {
            if (DayOfYear.month(sun.dayOf(step)) == month - 1) {
                sum += wPerM2[step];
            }
        }
        return sum * sun.stepHours() / 1000 / DayOfYear.length(month - 1);
    }
}
