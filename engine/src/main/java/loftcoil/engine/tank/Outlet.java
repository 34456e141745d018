package loftcoil.engine.tank;

/**
 * The two neighbouring layers by which water leaves at a port. By a whole layer it would leave as if the port stood at that layer's far
 * edge; shared between two layers, by how far up its layer the port stands, it leaves at the port's own height.
 */
final class Outlet {

    private final double layersBelow;

    /** The lower layer. */
    int low;
    /** The upper layer, or the lower one again. */
    int high;
    /** What leaves by the upper one, of all. */
    double highShare;

    /** @param layersBelow height of the port in layers */
    Outlet(double layersBelow) {
        this.layersBelow = layersBelow;
    }

    /** For water that comes from above or from below, so many layers being wet. @return this */
    Outlet of(boolean fromAbove, int wet) {
        int at = Math.min(wet - 1, (int) layersBelow);
        double within = Math.min(1, layersBelow - at);
        low = fromAbove ? at : Math.max(0, at - 1);
        high = fromAbove ? Math.min(wet - 1, at + 1) : at;
        highShare = within;
        return this;
    }

    /** Heat of what leaves, J/kg. */
    double mix(double[] jPerKg) {
        return jPerKg[low] + highShare * (jPerKg[high] - jPerKg[low]);
    }
}
