package loftcoil.engine.sheet;

/** Figures of a sheet that belong together. */
public enum FigureGroup {
    /** The loop with the fire lit. */
    LOOP("loop.", "Loop, fire lit"),
    /** The loop with the fire out. */
    NIGHT("loop.coldFire.", "Loop, fire out"),
    /** The fire lit after rests. */
    STARTS("starting.", "Starts: the fire lit after a rest"),
    /** The loop with the least heat that the fire may give. */
    LEAST_HEAT("loop.low.", "Loop with the least heat of the fire"),
    /** The loop with the most heat that the fire may give. */
    MOST_HEAT("loop.high.", "Loop with the most heat of the fire"),
    /** The loop in the worst of the states in which it is judged. */
    WORST("worst.", "Loop at its worst, any tank and fire"),
    /** The metal of the coil. */
    COIL("coil.", "Coil, fire lit"),
    /** Lime in the coil. */
    SCALE("scale.", "Lime in the coil"),
    /** What the coil leaves for the flue. */
    FLUE("flue.", "Flue, fire lit"),
    /** The weighed charge of the first fire. */
    FIRST_FIRE("firstFire.", "First fire"),
    /** The tank. */
    TANK("tank.", "Tank"),
    /** The coldest night. */
    FROST("frost.", "Frost on the coldest night"),
    /** The taps. */
    TAPS("taps", "Taps, each alone open"),
    /** The panes. */
    PANES("window.", "Panes"),
    /** The year marched. */
    YEAR("year.", "Year"),
    /** The hottest clear week. */
    CLEAR_WEEK("spell.", "A clear week"),
    /** The worst dull week. */
    DULL_WEEK("dull.", "A dull week"),
    /** The year with the least heat that the fire may give. */
    YEAR_LEAST_HEAT("year.low.", "Year with the least heat of the fire"),
    /** The year with the most heat that the fire may give. */
    YEAR_MOST_HEAT("year.high.", "Year with the most heat of the fire"),
    /** The months of the year. */
    MONTHS("year.months", "Months of the year");

    private final String path;
    private final String words;

    FigureGroup(String path, String words) {
        this.path = path;
        this.words = words;
    }

    /** Where its figures stand in the sheet's JSON; of a list its name. */
    String path() {
        return path;
    }

    /** What it is called. */
    public String words() {
        return words;
    }

    /** Whether figures of it may be shown first: not those of a month or of the ends of a spread. */
    public boolean main() {
        return this == LOOP || this == NIGHT || this == WORST || this == TANK || this == PANES || this == YEAR;
    }
}
