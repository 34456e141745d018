package loftcoil.engine.fire;

import java.util.function.Function;

/**
 * More heat is asked of the coil than the fire sets free.
 *
 * @param askedW heat the coil is said to take, W
 * @param releasedW heat the fire releases, W
 */
public record OverdrawnFire(double askedW, double releasedW) implements FireAccount {

    @Override
    public <T> T match(Function<FireBalance, T> balanced, Function<OverdrawnFire, T> overdrawn) {
        return overdrawn.apply(this);
    }
}
