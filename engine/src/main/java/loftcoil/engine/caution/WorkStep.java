package loftcoil.engine.caution;

/** The steps of the work on a build sheet that cautions stand beside. */
public enum WorkStep {
    /** Buying and fitting the parts. */
    PARTS,
    /** Putting the weight of the tank where it is to stay. */
    LOADS,
    /** Filling, and the first fire. */
    FILLING,
    /** Looking after it. */
    UPKEEP
}
