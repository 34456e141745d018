package loftcoil.engine.study;

/** Figures of a sheet that belong together. */
public enum FigureGroup {
    /** The loop with the fire lit. */
    LOOP("Loop, fire lit"),
    /** The loop with the fire out. */
    NIGHT("Loop, fire out"),
    /** The loop with the least heat that the fire may give. */
    LEAST_HEAT("Loop with the least heat of the fire"),
    /** The loop with the most heat that the fire may give. */
    MOST_HEAT("Loop with the most heat of the fire"),
    /** The tank. */
    TANK("Tank"),
    /** The taps. */
    TAPS("Taps, each alone open"),
    /** The panes. */
    PANES("Panes"),
    /** The year marched. */
    YEAR("Year"),
    /** The year with the least heat that the fire may give. */
    YEAR_LEAST_HEAT("Year with the least heat of the fire"),
    /** The year with the most heat that the fire may give. */
    YEAR_MOST_HEAT("Year with the most heat of the fire"),
    /** The months of the year. */
    MONTHS("Months of the year");

    private final String words;

    FigureGroup(String words) {
        this.words = words;
    }

    /** What it is called. */
    public String words() {
        return words;
    }
}
