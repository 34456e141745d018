package loftcoil.engine.loop;

/**
 * The three levels of the tank that the loop knows, in metres above one floor.
 *
 * @param coldPortM level at which water leaves the tank for the cold legs, m
 * @param returnPortM level at which the hot legs come back, m; not below the cold port
 * @param waterlineM level of the free surface, m; not below the return port
 */
public record LoopHeights(double coldPortM, double returnPortM, double waterlineM) {

    /** Height of the return port above the cold port, m. */
    double portsApartM() {
        return returnPortM - coldPortM;
    }
}
