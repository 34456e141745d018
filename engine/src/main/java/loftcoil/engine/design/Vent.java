package loftcoil.engine.design;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How the tank stays open to the air.
 *
 * @param kind one of {@link #OPEN_PIPE}, {@link #LOOSE_LID}, {@link #SEALED}, {@link #NONE}
 * @param tube name of its tube in the tube table; needed for an open pipe
 * @param aboveWaterlineM its open end above the waterline, m; 0 to 10; needed for an open pipe
 * @param valve whether anything in it can shut it; needed for an open pipe
 */
public record Vent(String kind, Optional<String> tube, OptionalDouble aboveWaterlineM, Optional<Boolean> valve) {

    /** A pipe with an open end above the waterline. */
    public static final String OPEN_PIPE = "open pipe";

    /** A lid that lies loose on a tank open to the air. */
    public static final String LOOSE_LID = "loose lid";

    /** Closed on purpose, as an unvented system. */
    public static final String SEALED = "sealed";

    /** A closed tank without any vent. */
    public static final String NONE = "none";

    /** All kinds. */
    public static final List<String> KINDS = List.of(OPEN_PIPE, LOOSE_LID, SEALED, NONE);
}
