package loftcoil.engine.use;

import loftcoil.engine.tank.WaterHeat;
import loftcoil.engine.water.Water;

/** What a draw-off gets from hot water of one temperature; {@link MixedTap} follows a tank that cools as it is drawn. */
public sealed interface Delivery {

    /** Hot water used in L at its own density. */
    double hotLitres();

    /** Temperature at the tap in °C. */
    double givenC();

    /** Heat missing against what was wanted in J. */
    double shortJ();

    /**
     * As warm as wanted.
     *
     * @param hotLitres hot water used in L at its own density
     * @param givenC temperature at the tap in °C: what was wanted, or the cold supply's where that is warmer
     */
    record AsWanted(double hotLitres, double givenC) implements Delivery {
        @Override
        public double shortJ() {
            return 0;
        }
    }

    /**
     * All hot and still too cool.
     *
     * @param hotLitres hot water used in L at its own density
     * @param givenC temperature at the tap in °C: that of the hot
     * @param shortJ heat missing against what was wanted in J
     */
    record TooCool(double hotLitres, double givenC, double shortJ) implements Delivery {}

    /**
     * What a draw-off gets.
     *
     * @param wanted what is wanted
     * @param hotC temperature of the hot in °C, 0 to 110
     * @param coldC temperature of the cold supply in °C, 0 to 110
     * @throws loftcoil.engine.fault.RefusedException where a temperature is outside its range or not a number
     */
    static Delivery of(DrawOff wanted, double hotC, double coldC) {
        double share = Mixing.hotShare(hotC, coldC, wanted.mixedC());
        double litres = share * wanted.mixedKg() / Water.densityKgPerM3(hotC) * 1000;
        if (share < 1) {
            return new AsWanted(litres, Math.max(wanted.mixedC(), coldC));
        }
        double missing = WaterHeat.jPerKg(wanted.mixedC()) - WaterHeat.jPerKg(hotC);
        return missing > 0
                ? new TooCool(litres, hotC, missing * wanted.mixedKg())
                : new AsWanted(litres, wanted.mixedC());
    }
}
