package loftcoil.engine.supply;

import loftcoil.engine.fault.Allowed;
import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.tank.TankShape;
import org.hipparchus.analysis.integration.IterativeLegendreGaussIntegrator;

/** How long a tap alone takes to fill a vessel. */
public sealed interface FillTime {

    /** The volumes accepted, in L. */
    Allowed LITRES = new Allowed(0.01, 10_000, "L");

    /**
     * It fills.
     *
     * @param minutes time it takes in min
     */
    record Fills(double minutes) implements FillTime {}

    /**
     * The tank runs down to its port, or to the mouth of the tap, first.
     *
     * @param litres what came in L
     */
    record RunsDry(double litres) implements FillTime {}

    /** The tap does not run at all. */
    record Never() implements FillTime {}

    /**
     * With the tank kept full.
     *
     * @param flow what the tap does
     * @param litres volume to fill in L, 0.01 to 10 000
     * @throws RefusedException where the volume is outside its range or not a number
     */
    static FillTime atFullTank(TapFlow flow, double litres) {
        LITRES.require("litres", litres);
        return flow.flowLPerMin() > 0 ? new Fills(litres / flow.flowLPerMin()) : new Never();
    }

    /**
     * With a tank that is not refilled: its level falls and the flow with it, t = ∫ dV/Q.
     *
     * @param supply the supply, its tank full to the waterline
     * @param fall the tap, the tank and its port
     * @param litres volume to fill in L, 0.01 to 10 000
     * @throws RefusedException where the volume is outside its range or not a number, or there is no such tap
     */
    static FillTime fallingLevel(GravitySupply supply, Fall fall, double litres) {
        double wantedM3 = LITRES.require("litres", litres) / 1000;
        if (!(supply.alone(fall.outlet()).flowLPerMin() > 0)) {
            return new Never();
        }
        double lowestM = Math.max(fall.drawPortLevelM(), supply.waterlineM() - supply.headM(fall.outlet()));
        double fallsM = Math.max(0, supply.waterlineM() - lowestM);
        double fullM3 = fall.shape().volumeBelowM3(fall.waterlineM());
        double thereM3 = fullM3 - fall.shape().volumeBelowM3(fall.waterlineM() - fallsM);
        if (wantedM3 >= thereM3) {
            return new RunsDry(thereM3 * 1000);
        }
        // The last drops toward a mouth at the water's level take ever longer: 1/Q has an integrable pole there, so the
        // rule is
        // told to be content with a millionth.
        return new Fills(new IterativeLegendreGaussIntegrator(9, 1e-6, 1e-9)
                .integrate(
                        1_000_000,
                        drawnM3 -> 1000
                                / flowAt(
                                        supply,
                                        fall,
                                        fall.waterlineM() - fall.shape().levelM(fullM3 - drawnM3)),
                        0,
                        wantedM3));
    }

    private static double flowAt(GravitySupply supply, Fall fall, double fallenM) {
        return supply.withWaterline(supply.waterlineM() - fallenM)
                .alone(fall.outlet())
                .flowLPerMin();
    }

    /**
     * What falls where.
     *
     * @param outlet name of the tap
     * @param shape the tank
     * @param waterlineM its free surface above its lowest point in m
     * @param drawPortLevelM level of the tank's draw port above the finished floor in m; below it nothing comes
     */
    record Fall(String outlet, TankShape shape, double waterlineM, double drawPortLevelM) {}
}
