package loftcoil.engine.caution;

/** How soon a caution can come true, the soonest first: of two alike in gravity the sooner leads. */
public enum Onset {
    /** The next fire, the next draw, the next night in the room: nothing else has to happen. */
    NEXT_USE,
    /** One day of the year brings it: a frost, a hot week, a storm, a hand on a valve. */
    ONE_DAY,
    /** It gathers for weeks or years: tar, lime, germs, worn metal. */
    IN_TIME
}
