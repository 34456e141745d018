package loftcoil.engine.tank;

import java.util.ArrayList;
import java.util.List;
import loftcoil.engine.fault.Allowed;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.fault.RefusedException;

/**
 * How a tank is cut into layers for a march.
 *
 * @param shape the inside of the tank
 * @param ports heights of its ports and waterline
 * @param layers how many equal layers between base and waterline, 1 to 500; 48 serve a year
 * @param startC temperature of all water at the start in °C, 0 to boilC
 * @param boilC temperature at which the water in the tank boils in °C, 60 to 110: from the altitude
 */
public record LayerPlan(TankShape shape, Ports ports, int layers, double startC, double boilC) {

    /** The numbers of layers accepted. */
    public static final Allowed LAYERS = new Allowed(1, 500, "layers");

    /** The lowest waterline that holds water enough to march, in m. */
    private static final double LEAST_WATERLINE_M = 0.02;

    /**
     * Checks the plan.
     *
     * @throws RefusedException where a value is outside its range or not a number; all faults at once
     */
    public LayerPlan {
        ports.requireWithin(shape);
        List<Fault> faults = new ArrayList<>();
        LAYERS.faultIn("layers", layers).ifPresent(faults::add);
        new Allowed(60, 110, "°C").faultIn("boilC", boilC).ifPresent(faults::add);
        if (faults.isEmpty()) {
            new Allowed(0, boilC, "°C").faultIn("startC", startC).ifPresent(faults::add);
        }
        new Allowed(LEAST_WATERLINE_M, shape.heightM(), "m")
                .faultIn("waterlineM", ports.waterlineM())
                .ifPresent(faults::add);
        if (!faults.isEmpty()) {
            throw new RefusedException(faults);
        }
    }
}
