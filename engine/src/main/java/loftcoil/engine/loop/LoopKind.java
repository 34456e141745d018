package loftcoil.engine.loop;

/** Whether a loop is computed as one that is built, or as the ideal one of a textbook. */
public enum LoopKind {
    /** Entrance and exit at the tank are counted, and the heat each leg loses. */
    REAL,
    /** Neither: for comparison with published uniform loops, which have no tank in them and lose nothing on the way. */
    IDEAL
}
