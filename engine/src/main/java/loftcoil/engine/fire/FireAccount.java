package loftcoil.engine.fire;

import java.util.function.Function;

/** Whether a fire can give the coil what is asked of it. */
public sealed interface FireAccount permits FireBalance, OverdrawnFire {

    /**
     * Handles either case.
     *
     * @param balanced where the fire can
     * @param overdrawn where it cannot
     */
    <T> T match(Function<FireBalance, T> balanced, Function<OverdrawnFire, T> overdrawn);
}
