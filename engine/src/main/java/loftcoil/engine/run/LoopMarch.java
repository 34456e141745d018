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

    /** With the fire out, flow and loss are looked up anew after so much of a layer: a wide loop starts and stops within a quiet step. */
    private static final double PART_OF_A_LAYER = 0.25;

    /** They are not looked up anew before this, s. */
    private static final double SHORTEST_S = 120;

    private final LoopTables tables;
    private final LoopTable table;
    private final LoopTable warmer;
    private final Layers tank;
    private final TankColumn column;
    private final LoopReading reading = new LoopReading();
    private final LoopReading otherReading = new LoopReading();
    private double share;

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
    /** Looks into a table since the march began. */
    long looks;

    LoopMarch(LoopTables tables, LayerPlan plan, Layers tank) {
        this.tables = tables;
        table = tables.cold();
        warmer = tables.warm().orElse(table);
        this.tank = tank;
        this.column = new TankColumn(plan);
    }

    /** What follows happens in this month, 1 to 12. */
    void month(int month) {
        share = tables.shares().get(month - 1);
    }

    /** Reads a grid of the month; whether the loop flows anywhere on it. */
    private boolean read(LoopGrid cold, LoopGrid warm, double enteringC, double excessKgPerM3) {
        looks++;
        if (share == 0 || !warm.any()) {
            cold.read(enteringC, excessKgPerM3, reading);
            return cold.any();
        }
        warm.read(enteringC, excessKgPerM3, reading);
        if (cold.any()) {
            cold.read(enteringC, excessKgPerM3, otherReading);
            reading.towards(otherReading, 1 - share);
        }
        return true;
    }

    /** Push of the month at rest, Pa. */
    private double staticDrivePa(double enteringKgPerM3, double columnKgPerM3) {
        return LoopReading.between(
                table.staticDrivePa(enteringKgPerM3, columnKgPerM3),
                warmer.staticDrivePa(enteringKgPerM3, columnKgPerM3),
                share);
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
        boolean flows = read(table.lit(), warmer.lit(), coldC, column.densityKgPerM3(tank) - TankColumn.density(coldC));
        double heatJ = (flows ? reading.heatW() : table.boilingHeatW()) * seconds;
        coilJ += heatJ;
        if (!flows || !(reading.boilMarginK() > 0) || !(reading.flowKgPerS() > 0) || !tank.loopCovered()) {
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

    /** The fire is out for so long; flow and loss are looked up anew after each part of a layer that is carried round. */
    void out(double seconds) {
        double left = seconds;
        while (left > 0 && tank.loopCovered()) {
            left -= drift(left);
        }
    }

    /** Drifts for so long, or less where there is much to carry. @return for how long, s */
    private double drift(double seconds) {
        double columnDensity = column.densityKgPerM3(tank);
        double coldC = tank.coldPortC();
        double returnC = tank.returnPortC();
        double coldDensity = TankColumn.density(coldC);
        double returnDensity = TankColumn.density(returnC);
        if (staticDrivePa(coldDensity, columnDensity) > 0) {
            return drift(table.outForward(), warmer.outForward(), coldC, columnDensity - coldDensity, seconds);
        }
        if (staticDrivePa(returnDensity, columnDensity) < 0) {
            double back = columnDensity - returnDensity;
            return -drift(table.outBackward(), warmer.outBackward(), returnC, back, -seconds);
        }
        return seconds;
    }

    /** Drifts with the fire out; time negative for a backward flow. */
    private double drift(LoopGrid cold, LoopGrid warm, double leavingC, double excessKgPerM3, double signedSeconds) {
        boolean flows = read(cold, warm, leavingC, excessKgPerM3);
        double flow = reading.flowKgPerS();
        if (!flows || !(flow > 0)) {
            return signedSeconds;
        }
        double longest = Math.max(SHORTEST_S, PART_OF_A_LAYER * tank.lightestKg() / flow);
        double signed = Math.copySign(Math.min(Math.abs(signedSeconds), longest), signedSeconds);
        flowKgPerS = Math.copySign(flow, signed);
        backwardS += Math.max(0, -signed);
        nightLossJ -= tank.carryRound(flow * signed, -reading.lostW() / flow);
        return signed;
    }
}
