package loftcoil.engine.use;

import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.tank.WaterHeat;

/**
 * Share of hot in water mixed at a tap, by mass, from the balance of heat: hot share × h(hot) + cold share × h(cold) = h(mixed).
 * With one heat capacity for both it is the ratio of temperature differences; with the real one it differs by under 0.005.
 */
public final class Mixing {

    private Mixing() {}

    /**
     * Share of hot, with the heat capacity of water as it is.
     *
     * @param hotC temperature of the hot in °C, 0 to 110
     * @param coldC temperature of the cold in °C, 0 to 110
     * @param wantedC temperature wanted in °C, 0 to 110
     * @return 0 to 1: 0 where the cold alone is warm enough, 1 where the hot is not hot enough
     * @throws RefusedException where a temperature is outside its range or not a number
     */
    public static double hotShare(double hotC, double coldC, double wantedC) {
        return share(WaterHeat.jPerKg(hotC), WaterHeat.jPerKg(coldC), WaterHeat.jPerKg(wantedC));
    }

    static double share(double hot, double cold, double wanted) {
        if (wanted <= cold) {
            return 0;
        }
        return wanted >= hot ? 1 : (wanted - cold) / (hot - cold);
    }
}
