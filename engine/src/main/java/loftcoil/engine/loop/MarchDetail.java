package loftcoil.engine.loop;

import loftcoil.engine.fault.Allowed;

/**
 * How finely a loop is marched through time, and how strongly water changes places inside a tube.
 *
 * @param cellM longest cell, m; 0.01 to 1
 * @param fewestCells least number of cells of a run, 1 to 100
 * @param cellsAStep cells of the smallest kind that water may pass in one step, 0.1 to 20
 * @param longestStepS longest step, s; 0.01 to 60
 * @param counterflow strength C of the counterflow in tube that is level or holds colder water over warmer: it spreads heat along the
 *     tube with the diffusivity C d² √(g β dT/ds), where d is the bore; 0 for none, to 10
 */
public record MarchDetail(double cellM, int fewestCells, double cellsAStep, double longestStepS, double counterflow) {

    private static final Allowed CELL = new Allowed(0.01, 1, "m");
    private static final Allowed FEWEST = new Allowed(1, 100, "");
    private static final Allowed PASSED = new Allowed(0.1, 20, "");
    private static final Allowed STEP = new Allowed(0.01, 60, "s");
    private static final Allowed STRENGTH = new Allowed(0, 10, "");

    /** Fine, without counterflow. */
    public static final MarchDetail USUAL = new MarchDetail(0.1, 6, 0.9, 0.5, 0);

    /** For marches of many hours: half cells and half steps change under 2 % of what starts come to. */
    public static final MarchDetail LONG = new MarchDetail(0.05, 2, 8, 10, 0);

    /** Length of a loop from which its cells grow with it, m: a long one costs no more than this. */
    private static final double LONG_LOOP_M = 10;

    /** Refuses what is out of range. */
    public MarchDetail {
        CELL.require("cellM", cellM);
        FEWEST.require("fewestCells", fewestCells);
        PASSED.require("cellsAStep", cellsAStep);
        STEP.require("longestStepS", longestStepS);
        STRENGTH.require("counterflow", counterflow);
    }

    /** The same with counterflow of another strength. */
    public MarchDetail withCounterflow(double strength) {
        return new MarchDetail(cellM, fewestCells, cellsAStep, longestStepS, strength);
    }

    /** The same for a loop of such a length, m: cells of a long one are longer, so that there are no more of them. */
    MarchDetail forLength(double loopM) {
        double times = Math.max(1, loopM / LONG_LOOP_M);
        return new MarchDetail(
                Math.min(CELL.high(), cellM * times), fewestCells, cellsAStep, longestStepS, counterflow);
    }

    /** Cells and steps half as long. */
    public MarchDetail halved() {
        return new MarchDetail(cellM / 2, 2 * fewestCells, cellsAStep, longestStepS / 2, counterflow);
    }
}
