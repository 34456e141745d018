package loftcoil.engine.run;

import java.util.stream.IntStream;
import loftcoil.engine.tank.LayerPlan;
import loftcoil.engine.tank.Layers;
import loftcoil.engine.tank.Ports;
import loftcoil.engine.water.Water;

/** Mean density of the water between the loop's two ports, from the layers; reading it allocates nothing. */
final class TankColumn {

    private static final int PER_KELVIN = 2;

    /** Every half kelvin, straight between: within 0.0004 kg/m³ of IAPWS SR6-08. */
    private static final double[] DENSITY = IntStream.rangeClosed(0, 110 * PER_KELVIN)
            .mapToDouble(half -> Water.densityKgPerM3((double) half / PER_KELVIN))
            .toArray();

    private final double[] share;
    private final int from;

    TankColumn(LayerPlan plan) {
        Ports ports = plan.ports();
        double[] edges = plan.cutsM();
        double apartM = ports.returnM() - ports.coldM();
        from = sliceAt(edges, ports.coldM());
        int to = apartM > 0 ? sliceAt(edges, ports.returnM()) : from;
        share = new double[to - from + 1];
        for (int i = 0; i < share.length; i++) {
            double low = Math.max(ports.coldM(), edges[from + i]);
            double high = Math.min(ports.returnM(), edges[from + i + 1]);
            share[i] = apartM > 0 ? Math.max(0, high - low) / apartM : 1;
        }
    }

    private static int sliceAt(double[] edges, double levelM) {
        int slice = 0;
        while (slice + 2 < edges.length && edges[slice + 1] <= levelM) {
            slice++;
        }
        return slice;
    }

    /** kg/m³; layers above the water count as the top one. */
    double densityKgPerM3(Layers tank) {
        double sum = 0;
        for (int i = 0; i < share.length; i++) {
            sum += share[i] * density(tank.tempC(Math.min(from + i, tank.wet() - 1)));
        }
        return sum;
    }

    /** Density of water, kg/m³. */
    static double density(double tempC) {
        double at = Math.min(Math.max(tempC, 0), 110) * PER_KELVIN;
        int cell = Math.min((int) at, DENSITY.length - 2);
        return DENSITY[cell] + (at - cell) * (DENSITY[cell + 1] - DENSITY[cell]);
    }
}
