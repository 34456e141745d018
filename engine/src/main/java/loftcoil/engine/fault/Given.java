package loftcoil.engine.fault;

import java.util.Optional;
import java.util.OptionalDouble;

/** Takes what may be missing, for those who write a few lines of Java by hand. */
public final class Given {

    private Given() {}

    /**
     * What there is.
     *
     * @param maybe what a design may not say, or a loop may not have
     * @throws RefusedException where there is nothing
     */
    public static <T> T given(Optional<T> maybe) {
        return maybe.orElseThrow(Given::nothing);
    }

    /**
     * The number there is.
     *
     * @param maybe a number that may not be known
     * @throws RefusedException where there is none
     */
    public static double given(OptionalDouble maybe) {
        return maybe.orElseThrow(Given::nothing);
    }

    private static RefusedException nothing() {
        return RefusedException.of(
                "given",
                "nothing",
                "something: the design does not say it, or the loop does not have it; ask isPresent() first");
    }
}
