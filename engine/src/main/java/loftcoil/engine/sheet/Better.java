package loftcoil.engine.sheet;

/** Which way of a figure is the better one. */
public enum Better {
    /** More is better. */
    MORE,
    /** Less is better. */
    LESS,
    /** Neither in itself. */
    NONE
}
