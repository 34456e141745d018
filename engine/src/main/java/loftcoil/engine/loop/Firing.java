package loftcoil.engine.loop;

/**
 * What the coil does.
 *
 * @param lit whether the fire is lit; an unlit coil is a tube that loses heat to what is around it
 * @param heatW heat the water takes up in the coil, W; 0 or more; 0 where the fire is out
 */
public record Firing(boolean lit, double heatW) {

    /** A lit fire whose coil gives the water this heat, W. */
    public static Firing lit(double heatW) {
        return new Firing(true, heatW);
    }

    /** No fire: the coil is a tube at the temperature around it. */
    public static Firing out() {
        return new Firing(false, 0);
    }
}
