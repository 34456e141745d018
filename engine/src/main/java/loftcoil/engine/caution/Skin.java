package loftcoil.engine.caution;

/** Whose skin. */
public enum Skin {
    /** Of a healthy adult. */
    ADULT,
    /** Of a small child: thinner, burnt sooner. */
    INFANT
}
