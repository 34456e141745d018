package loftcoil.engine.tank;

import java.util.List;
import loftcoil.engine.fault.Allowed;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.words.Numeral;

/**
 * The lowest water level at which the loop is still whole. Once the return port draws air the riser empties, the loop stops,
 * and a lit fire boils what is left in the coil.
 *
 * @param leastM lowest safe level above the tank's base in m
 * @param waterlineM level when full, above the tank's base in m
 * @param spareM3 water between the two in m³: what may be drawn without refill; negative where even full is too low
 */
public record SafeLevel(double leastM, double waterlineM, double spareM3) {

    /**
     * Water to keep above the top of the return port, in m. Common practice, no source: it covers a tank out of level and the
     * dip over a port that sucks.
     */
    public static final double USUAL_COVER_M = 0.05;

    /**
     * The safe level of a tank.
     *
     * @param shape the inside of the tank
     * @param ports heights of the ports and of the waterline
     * @param coverM water to keep above the top of the return port in m, 0 to 1; see {@link #USUAL_COVER_M}
     * @throws RefusedException where a height is outside the tank or not a number
     */
    public static SafeLevel of(TankShape shape, Ports ports, double coverM) {
        ports.requireWithin(shape);
        double highest = Math.max(ports.returnM(), ports.coldM());
        double least = highest + ports.boreM() / 2 + new Allowed(0, 1, "m").require("coverM", coverM);
        if (least > shape.heightM()) {
            throw new RefusedException(List.of(new Fault(
                    "returnM",
                    Numeral.typed(ports.returnM()),
                    "at most " + (shape.heightM() - (least - highest)) + " m",
                    "the port cannot be covered before the tank runs over")));
        }
        return new SafeLevel(
                least, ports.waterlineM(), shape.volumeBelowM3(ports.waterlineM()) - shape.volumeBelowM3(least));
    }
}
