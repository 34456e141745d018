package loftcoil.engine.start;

import java.util.Locale;

/** What a start comes to. */
public enum StartEnd {
    /** The water flows forward, as it should. */
    FORWARD,
    /** It flows backward: up the cold legs. */
    BACKWARD,
    /** It still swings when the march ends. */
    SWINGS,
    /** It hardly moves, and nothing boils. */
    STILL,
    /** It still boils when the march ends. */
    BOILS;

    /** Its code, such as {@code forward}. */
    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }
}
