package loftcoil.engine.tank;

import loftcoil.engine.pipe.Lagging;

/**
 * Lagging of a tank; {@link Lagging#NONE} where a face is bare.
 *
 * @param side around the wall
 * @param top on the lid
 * @param bottom under the base
 */
public record TankLagging(Lagging side, Lagging top, Lagging bottom) {

    /** No lagging on any face. */
    public static final TankLagging BARE = allRound(Lagging.NONE);

    /**
     * The same lagging on every face.
     *
     * @param lagging material and thickness
     */
    public static TankLagging allRound(Lagging lagging) {
        return new TankLagging(lagging, lagging, lagging);
    }
}
