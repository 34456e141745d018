package loftcoil.engine.design;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How the tank stays open to the air.
 *
 * @param kind what it is
 * @param tube name of its tube in the tube table; needed for an open pipe
 * @param aboveWaterlineM its open end above the waterline, m; 0 to 10; needed for an open pipe
 * @param valve whether anything in it can shut it; needed for an open pipe
 */
public record Vent(Kind kind, Optional<String> tube, OptionalDouble aboveWaterlineM, Optional<Boolean> valve) {

    /** Kinds of vent. */
    public enum Kind implements Coded {
        /** A pipe with an open end above the waterline. */
        OPEN_PIPE("open pipe"),
        /** A lid that lies loose on a tank open to the air. */
        LOOSE_LID("loose lid"),
        /** Closed on purpose, as an unvented system. */
        SEALED("sealed"),
        /** A closed tank without any vent. */
        NONE("none");

        private final String code;

        Kind(String code) {
            this.code = code;
        }

        @Override
        public String code() {
            return code;
        }

        @Override
        public String label() {
            return this == NONE ? "no vent at all" : code;
        }
    }
}
