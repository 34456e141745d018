package loftcoil.engine.study;

/** What became of a figure. */
public enum Trend {
    /** It is the same, but for the last digits of the reckoning. */
    SAME,
    /** It changed for the better. */
    BETTER,
    /** It changed for the worse. */
    WORSE,
    /** It changed, and neither way is better in itself. */
    DIFFERENT,
    /** Only the later design has it. */
    NEW,
    /** Only the earlier design had it. */
    GONE
}
