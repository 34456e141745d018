package loftcoil.engine.clear;

import java.util.List;

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
    /** The same, the starts marched as finely as for the whole verdict. */
    SURE_STARTS,
    /** All but the starts, the year marched as finely as for the whole verdict. */
    FINE_YEAR,
    /** The whole verdict. */
    WHOLE;

    /** Those that this one takes in and that cost less, the cheapest first: what they already see need not be looked for so deeply. */
    List<Depth> before() {
        return switch (this) {
            case QUICK -> List.of();
            case YEAR, STARTS, FINE_YEAR -> List.of(QUICK);
            case HOT_STARTS -> List.of(QUICK, YEAR);
            case SURE_STARTS -> List.of(QUICK, YEAR, HOT_STARTS);
            case WHOLE -> List.of(QUICK, FINE_YEAR);
        };
    }
}
