package loftcoil.engine.tank;

import loftcoil.engine.fault.Allowed;

/**
 * What acts on a tank between draws: still air around its lagging, a window, sunshine, a heater. Made once for a march and
 * set anew for each step; setting allocates nothing. Not safe for use by several threads.
 */
public final class TankSurroundings {

    private static final Allowed WATTS = new Allowed(-1e5, 1e5, "W");
    private static final Allowed OUTSIDE = new Allowed(-60, 110, "°C");
    private static final Allowed CONDUCTANCE = new Allowed(0, 1e4, "W/K");

    private final Allowed layers;
    final double[] heaterW;
    double sideWPerK;
    double topWPerK;
    double bottomWPerK;
    double aroundC;
    double windowWPerK;
    double windowC;
    double sunW;

    /**
     * Surroundings of a tank that loses nothing and gains nothing.
     *
     * @param layers number of layers of the tank, 1 to 500
     * @throws loftcoil.engine.fault.RefusedException where the number is outside its range
     */
    public TankSurroundings(int layers) {
        heaterW = new double[(int) LayerPlan.LAYERS.require("layers", layers)];
        this.layers = new Allowed(0, layers - 1, "");
    }

    /**
     * Sets what the lagged faces lose.
     *
     * @param loss conductance of the full tank; the wall counts up to the water's level, the lid always
     * @param aroundC temperature around the tank in °C, -60 to 110
     * @return this
     * @throws loftcoil.engine.fault.RefusedException where the temperature is outside its range or not a number
     */
    public TankSurroundings loss(TankLoss loss, double aroundC) {
        this.aroundC = OUTSIDE.require("aroundC", aroundC);
        sideWPerK = loss.sideWPerK();
        topWPerK = loss.topWPerK();
        bottomWPerK = loss.bottomWPerK();
        return this;
    }

    /**
     * Sets what a window along the whole wall loses.
     *
     * @param wPerK conductance of the whole window in W/K, 0 to 10 000
     * @param outsideC temperature behind it in °C, -60 to 110
     * @return this
     * @throws loftcoil.engine.fault.RefusedException where a value is outside its range or not a number
     */
    public TankSurroundings window(double wPerK, double outsideC) {
        windowWPerK = CONDUCTANCE.require("wPerK", wPerK);
        windowC = OUTSIDE.require("outsideC", outsideC);
        return this;
    }

    /**
     * Sets the sunshine caught by the whole wall, spread evenly over its height. What falls on wall above the water is lost.
     *
     * @param watts heat caught in W, -100 000 to 100 000
     * @return this
     * @throws loftcoil.engine.fault.RefusedException where the value is outside its range or not a number
     */
    public TankSurroundings sun(double watts) {
        sunW = WATTS.require("watts", watts);
        return this;
    }

    /**
     * Sets the heat put into one layer.
     *
     * @param layer counted from the base, from 0
     * @param watts heat in W, -100 000 to 100 000; a layer above the water takes none
     * @return this
     * @throws loftcoil.engine.fault.RefusedException where a value is outside its range or not a number
     */
    public TankSurroundings heater(int layer, double watts) {
        int at = (int) layers.require("layer", layer);
        heaterW[at] = WATTS.require("watts", watts);
        return this;
    }
}
