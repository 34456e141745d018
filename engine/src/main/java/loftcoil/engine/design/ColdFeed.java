package loftcoil.engine.design;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How the tank is filled up again.
 *
 * @param kind what brings the water
 * @param drinkingWater whether it is joined to water that somebody drinks
 * @param boreMm bore of the inlet, mm; 5 to 100; needed unless it is filled by hand
 * @param airGapMm free fall from the inlet to the highest level the water can reach, mm; 0 to 1000
 * @param valve whether there is a valve between feed cistern and tank; needed for a feed cistern
 * @param overflowBoreMm bore of the tank's overflow, mm; 0 (none) to 200
 * @param plasticCistern whether the feed cistern is of plastic
 */
public record ColdFeed(
        Kind kind,
        boolean drinkingWater,
        OptionalDouble boreMm,
        OptionalDouble airGapMm,
        Optional<Boolean> valve,
        OptionalDouble overflowBoreMm,
        Optional<Boolean> plasticCistern) {

    /** Kinds of cold feed. */
    public enum Kind implements Coded {
        /** With bucket or hose when somebody thinks of it. */
        BY_HAND("by hand"),
        /** A float valve in the tank itself. */
        FLOAT_VALVE("float valve"),
        /** A pipe from a small cistern beside it that has the float valve. */
        FEED_CISTERN("feed cistern");

        private final String code;

        Kind(String code) {
            this.code = code;
        }

        @Override
        public String code() {
            return code;
        }
    }
}
