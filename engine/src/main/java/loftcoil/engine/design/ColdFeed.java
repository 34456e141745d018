package loftcoil.engine.design;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How the tank is filled up again.
 *
 * @param kind one of {@link #BY_HAND}, {@link #FLOAT_VALVE}, {@link #FEED_CISTERN}
 * @param drinkingWater whether it is joined to water that somebody drinks
 * @param boreMm bore of the inlet, mm; 5 to 100; needed unless it is filled by hand
 * @param airGapMm free fall from the inlet to the highest level the water can reach, mm; 0 to 1000
 * @param valve whether there is a valve between feed cistern and tank; needed for a feed cistern
 */
public record ColdFeed(
        String kind, boolean drinkingWater, OptionalDouble boreMm, OptionalDouble airGapMm, Optional<Boolean> valve) {

    /** With bucket or hose when somebody thinks of it. */
    public static final String BY_HAND = "by hand";

    /** A float valve in the tank itself. */
    public static final String FLOAT_VALVE = "float valve";

    /** A pipe from a small cistern beside it that has the float valve. */
    public static final String FEED_CISTERN = "feed cistern";

    /** All kinds. */
    public static final List<String> KINDS = List.of(BY_HAND, FLOAT_VALVE, FEED_CISTERN);
}
