package loftcoil.engine.sun;

import loftcoil.engine.constant.Constants;
import loftcoil.engine.fault.Allowed;
import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.gas.Air;

/**
 * The air between two parallel plates and how it carries heat. With the warm plate below: Hollands, Unny, Raithby and
 * Konicek (1976), Duffie and Beckman equation 3.11.4, for tilts to 75 degrees and Rayleigh numbers to 1e5; from there to 90
 * degrees a straight line to the vertical form of EN 673, 0.035 Ra^0.38. With the warm plate above only the sideways part
 * stirs the air: {@code 1 + (Nu(90°) - 1) sin tilt}, as for cavities in Incropera, 6th ed., equation 9.54 (from memory).
 * The plates are taken as large against the gap.
 *
 * @param widthM distance of the plates in m, 0.003 to 0.2
 * @param tiltDeg tilt of the plates from the horizontal in degrees, 0 to 90
 * @param pressurePa pressure of the air in Pa
 */
public record AirGap(double widthM, double tiltDeg, double pressurePa) {

    /** Widths accepted. */
    public static final Allowed WIDTH = new Allowed(0.003, 0.2, "m");

    private static final double STEEPEST_FITTED_DEG = 75;
    private static final double CRITICAL_RAYLEIGH = 1708;

    /**
     * Checks every part.
     *
     * @throws RefusedException with all faults, where a part is outside its range or not a number
     */
    public AirGap {
        new FaultList()
                .check("widthM", widthM, WIDTH)
                .check("tiltDeg", tiltDeg, Facing.TILT)
                .check("pressurePa", pressurePa, Air.PRESSURE)
                .refuseIfAny();
    }

    /**
     * Conduction and convection together.
     *
     * @param lowerC temperature of the plate below (the inner one of a window) in °C
     * @param upperC temperature of the plate above (the outer one) in °C
     * @return W/(m² K)
     * @throws RefusedException where a temperature is outside the range of {@link Air}
     */
    public double convectionWPerM2K(double lowerC, double upperC) {
        double middleC = (lowerC + upperC) / 2;
        double rayleigh = rayleigh(middleC, Math.abs(lowerC - upperC));
        double nusselt = lowerC >= upperC ? nusseltWarmBelow(rayleigh) : nusseltWarmAbove(rayleigh);
        return nusselt * Air.conductivityWPerMK(middleC) / widthM;
    }

    /** Rayleigh number of the gap. */
    double rayleigh(double middleC, double differenceK) {
        double kinematic = Air.viscosityPaS(middleC) / Air.densityKgPerM3(middleC, pressurePa);
        double buoyancy = Constants.GRAVITY_M_PER_S2 * differenceK / (middleC + Constants.KELVIN_AT_ZERO_C);
        return buoyancy * widthM * widthM * widthM * Air.prandtl(middleC) / (kinematic * kinematic);
    }

    /** Nusselt number with the warm plate below. */
    double nusseltWarmBelow(double rayleigh) {
        if (tiltDeg <= STEEPEST_FITTED_DEG) {
            return hollands(rayleigh, tiltDeg);
        }
        double share = (tiltDeg - STEEPEST_FITTED_DEG) / (90 - STEEPEST_FITTED_DEG);
        return (1 - share) * hollands(rayleigh, STEEPEST_FITTED_DEG) + share * vertical(rayleigh);
    }

    private double nusseltWarmAbove(double rayleigh) {
        return 1 + (vertical(rayleigh) - 1) * Math.sin(Math.toRadians(tiltDeg));
    }

    private static double hollands(double rayleigh, double tiltDeg) {
        double tilt = Math.toRadians(tiltDeg);
        double driving = rayleigh * Math.cos(tilt);
        if (driving <= CRITICAL_RAYLEIGH) {
            return 1;
        }
        double damping = 1 - CRITICAL_RAYLEIGH * Math.pow(Math.sin(1.8 * tilt), 1.6) / driving;
        double onset = 1 - CRITICAL_RAYLEIGH / driving;
        double turbulent = Math.max(0, Math.cbrt(driving / 5830) - 1);
        return 1 + 1.44 * damping * onset + turbulent;
    }

    private static double vertical(double rayleigh) {
        return Math.max(1, 0.035 * Math.pow(rayleigh, 0.38));
    }
}
