package loftcoil.engine.tank;

import loftcoil.engine.constant.Constants;
import loftcoil.engine.fault.Allowed;
import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.water.Water;

/**
 * What a tank weighs full to the brim with cold water, which is when it is heaviest: a ball valve that sticks fills it past
 * the waterline. Dead load only: no allowance for people, snow, slosh or a safety factor; those are for the local code and
 * whoever answers for the structure.
 *
 * @param waterKg mass of the water in kg, at the density of 10 °C
 * @param emptyKg mass of tank, lagging and whatever is bolted to it, in kg
 * @param footprintM2 area of the base in m²
 */
public record FullWeight(double waterKg, double emptyKg, double footprintM2) {

    /** The temperature of cold water for weight and growth, °C. */
    public static final double COLD_C = 10;

    /** The empty masses accepted, in kg. */
    public static final Allowed EMPTY = new Allowed(0, 5000, "kg");

    /**
     * Checks the values.
     *
     * @throws RefusedException where a value is outside its range or not a number
     */
    public FullWeight {
        new Allowed(0, 25_000, "kg").require("waterKg", waterKg);
        EMPTY.require("emptyKg", emptyKg);
        new Allowed(0.001, 200, "m²").require("footprintM2", footprintM2);
    }

    /**
     * The weight of a tank filled to the brim.
     *
     * @param shape the inside of the tank
     * @param emptyKg mass of the empty tank with its lagging in kg, 0 to 5000
     * @throws RefusedException where the mass is outside its range or not a number
     */
    public static FullWeight of(TankShape shape, double emptyKg) {
        return new FullWeight(shape.volumeM3() * Water.densityKgPerM3(COLD_C), emptyKg, shape.footprintM2());
    }

    /** Mass in kg. */
    public double massKg() {
        return waterKg + emptyKg;
    }

    /** Weight in N. */
    public double forceN() {
        return massKg() * Constants.GRAVITY_M_PER_S2;
    }

    /** Mean pressure on what carries the whole base, in kN/m². */
    public double pressureKNPerM2() {
        return forceN() / 1000 / footprintM2;
    }

    /**
     * Weight on each of several bearers that share it evenly. They only do so where the tank stands in their middle and they
     * give alike; uneven bearers can put half as much again on one.
     *
     * @param bearers how many, 1 to 50
     * @return N on each
     * @throws RefusedException where the number is outside its range
     */
    public double perBearerN(int bearers) {
        return forceN() / new Allowed(1, 50, "bearers").require("bearers", bearers);
    }

    /**
     * Pressure where bearers touch the base.
     *
     * @param bearers how many, 1 to 50
     * @param widthM width of each in m, 0.01 to 1
     * @param lengthM length of each under the tank in m, 0.01 to 10
     * @return kN/m² over the touching faces
     * @throws RefusedException where a value is outside its range or not a number
     */
    public double underBearersKNPerM2(int bearers, double widthM, double lengthM) {
        double face = new Allowed(0.01, 1, "m").require("widthM", widthM)
                * new Allowed(0.01, 10, "m").require("lengthM", lengthM);
        return perBearerN(bearers) / 1000 / face;
    }
}
