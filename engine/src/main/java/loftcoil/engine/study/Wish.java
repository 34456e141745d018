package loftcoil.engine.study;

/** Which way of a figure is the better one. */
public enum Wish {
    /** More is better. */
    MORE,
    /** Less is better. */
    LESS,
    /** Neither in itself. */
    NONE
}
