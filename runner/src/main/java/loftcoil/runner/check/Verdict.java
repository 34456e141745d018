package loftcoil.runner.check;

/** What is said of an answer. */
public sealed interface Verdict {

    /**
     * Within the tolerance.
     *
     * @param offBy how far from the reference, as a ratio of it; 0 where exact or where it does not apply
     */
    record Right(double offBy) implements Verdict {}

    /**
     * A number of the right kind, but not the right one, or the wrong choice.
     *
     * @param offBy how far from the reference, as a signed ratio of it; 0 where it does not apply
     * @param hint what the likely mistake is; empty where none is known
     */
    record Wrong(double offBy, String hint) implements Verdict {}

    /**
     * A number in a unit that measures something else.
     *
     * @param given what the given unit measures or is
     * @param wanted what is wanted, with an example unit
     */
    record WrongKind(String given, String wanted) implements Verdict {}

    /**
     * Not readable as an answer at all.
     *
     * @param words what could not be read and what would be
     */
    record Unreadable(String words) implements Verdict {}

    /** A prediction, noted without judging. */
    record Noted() implements Verdict {}
}
