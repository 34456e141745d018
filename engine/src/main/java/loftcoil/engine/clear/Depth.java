package loftcoil.engine.clear;

/** How deeply a design is judged, the cheapest first. */
enum Depth {
    /** The steady states and the rules. */
    QUICK,
    /** These and the year, marched coarsely. */
    YEAR,
    /** These and the starts on a cool and on a warm tank, without the year. */
    STARTS,
    /** These, the coarse year and the starts on the tank as hot as that brings it. */
    HOT_STARTS,
    /** All but the starts, the year marched as finely as for the whole verdict. */
    FINE_YEAR,
    /** The whole verdict. */
    WHOLE
}
