package loftcoil.engine.run;

import loftcoil.engine.tank.LayerPlan;
import loftcoil.engine.tank.Layers;

/**
 * The loop's part of a step: carries water between coil and tank and books the heat. Steady at every step.
 *
 * <p>Where the loop cannot carry the fire's heat off without boiling, because no steady flow exists or because a port of the tank
 * is dry, all heat of that time is taken to leave as steam by the vent: it is booked as loss and the time is counted. In truth part
 * of it would reach the tank in bursts; a loop that boils is nothing to count on. Where water comes back hotter than it can be
 * at the tank's surface, the excess flashes off there. No method but the constructor allocates.
 */
final class LoopMarch {

    private final LoopTable table;
    private final Layers tank;
    private final TankColumn column;
    private final LoopReading reading = new LoopReading();

    /** Heat from the fire, J. */
    double coilJ;
    /** Heat that left as steam because the loop boiled, J. */
    double steamJ;
    /** Heat lost by the legs while the fire burnt, J. */
    double litLossJ;
    /** Heat lost by legs and coil with the fire out, J. */
    double nightLossJ;
    /** Time with a backward flow, s. */
    double backwardS;
    /** Flow of the last step, kg/s, forward positive. */
    double flowKgPerS;
    /** Hottest water that came back from the lit coil in the last step, °C; 0 where none did. */
    double hottestBackC;
    /** Whether the loop boiled in the last step. */
    boolean boiled;

    LoopMarch(LoopTable table, LayerPlan plan, Layers tank) {
        this.table = table;
        this.tank = tank;
        this.column = new TankColumn(plan);
    }

    /** Forgets what the step before did. */
    void begin() {
        flowKgPerS = 0;
        hottestBackC = 0;
        boiled = false;
    }

    /** The fire burns for so long. */
    void lit(double seconds) {
        double coldC = tank.coldPortC();
        LoopGrid grid = table.lit();
        grid.read(coldC, column.densityKgPerM3(tank) - TankColumn.density(coldC), reading);
        double heatJ = (grid.any() ? reading.heatW() : table.boilingHeatW()) * seconds;
        coilJ += heatJ;
        if (!grid.any() || !(reading.boilMarginK() > 0) || !(reading.flowKgPerS() > 0) || !tank.loopCovered()) {
            steamJ += heatJ;
            boiled = true;
            return;
        }
        flowKgPerS = reading.flowKgPerS();
        double rise = (reading.heatW() - reading.lostW()) / flowKgPerS;
        double gainedJ = tank.carryRound(flowKgPerS * seconds, rise);
        double flashedJ = tank.lastFlashedJ();
        boiled |= flashedJ > 0;
        hottestBackC = Math.max(hottestBackC, tank.lastHottestBackC());
        steamJ += flashedJ;
        litLossJ += heatJ - flashedJ - gainedJ;
    }

    /** The fire is out for so long. */
    void out(double seconds) {
        if (!tank.loopCovered()) {
            return;
        }
        double columnDensity = column.densityKgPerM3(tank);
        double coldC = tank.coldPortC();
        double returnC = tank.returnPortC();
        double coldDensity = TankColumn.density(coldC);
        double returnDensity = TankColumn.density(returnC);
        if (table.staticDrivePa(coldDensity, columnDensity) > 0) {
            drift(table.outForward(), coldC, columnDensity - coldDensity, seconds);
        } else if (table.staticDrivePa(returnDensity, columnDensity) < 0) {
            drift(table.outBackward(), returnC, columnDensity - returnDensity, -seconds);
        }
    }

    /** Drifts with the fire out; time negative for a backward flow. */
    private void drift(LoopGrid grid, double leavingC, double excessKgPerM3, double signedSeconds) {
        grid.read(leavingC, excessKgPerM3, reading);
        double flow = reading.flowKgPerS();
        if (grid.any() && flow > 0) {
            flowKgPerS = Math.copySign(flow, signedSeconds);
            backwardS += Math.max(0, -signedSeconds);
            nightLossJ -= tank.carryRound(flow * signedSeconds, -reading.lostW() / flow);
        }
    }
}
