package loftcoil.engine.tank;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import loftcoil.engine.fault.Allowed;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.fault.RefusedException;

/**
 * How a tank is cut into layers for a march: into equal ones, or so that layers end at its ports.
 *
 * @param shape the inside of the tank
 * @param ports heights of its ports and waterline
 * @param layers how many layers between base and waterline, 1 to 500; 54 serve a year
 * @param startC temperature of all water at the start in °C, 0 to boilC
 * @param boilC temperature at which the water in the tank boils in °C, 60 to 110: from the altitude
 * @param cutAtPorts whether layers end at the ports, where water then leaves at its own height; else all hold as much
 */
public record LayerPlan(TankShape shape, Ports ports, int layers, double startC, double boilC, boolean cutAtPorts) {

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

    /** A tank cut into equal layers. */
    public LayerPlan(TankShape shape, Ports ports, int layers, double startC, double boilC) {
        this(shape, ports, layers, startC, boilC, false);
    }

    /**
     * Water below each cut.
     *
     * @return one more than layers, from 0 to all the water, m³
     */
    public double[] cutsM3() {
        double waterM3 = shape.volumeBelowM3(ports.waterlineM());
        double[] cuts = cutAtPorts
                ? LayerCuts.atPorts(
                        layers,
                        share(ports.coldM(), waterM3),
                        share(ports.drawM(), waterM3),
                        share(ports.returnM(), waterM3))
                : IntStream.rangeClosed(0, layers)
                        .mapToDouble(i -> (double) i / layers)
                        .toArray();
        return Arrays.stream(cuts).map(cut -> cut * waterM3).toArray();
    }

    private double share(double levelM, double waterM3) {
        return shape.volumeBelowM3(levelM) / waterM3;
    }

    /**
     * Levels of the cuts.
     *
     * @return one more than layers, from 0 to the waterline, m
     */
    public double[] cutsM() {
        double[] levels = Arrays.stream(cutsM3()).map(shape::levelM).toArray();
        levels[layers] = ports.waterlineM();
        return levels;
    }
}
