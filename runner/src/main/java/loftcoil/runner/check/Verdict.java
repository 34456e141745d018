package loftcoil.runner.check;

import java.util.OptionalDouble;

/** What is said of an answer. */
public sealed interface Verdict {

    /**
     * Within the tolerance.
     *
     * @param offBy how far from the reference, as a signed ratio of it; 0 where exact or where it does not apply
     * @param taken how the answer was understood
     * @param say what to say to who chose it, in CommonMark; empty where nothing
     */
    record Right(double offBy, Taken taken, String say) implements Verdict {}

    /**
     * A number of the right kind, but not the right one, or the wrong choice.
     *
     * @param offBy how far from the reference, as a signed ratio of it; 0 where it does not apply
     * @param taken how the answer was understood
     * @param hint what the likely mistake is, in CommonMark; empty where none is known
     * @param mistake short name of that mistake, the same for every learner; empty where none is known
     */
    record Wrong(double offBy, Taken taken, String hint, String mistake) implements Verdict {}

    /**
     * A number in a unit that measures something else.
     *
     * @param given what the given unit measures or is
     * @param wanted what is wanted, with an example unit
     * @param help how to get from the one to the other; empty where nothing is known
     */
    record WrongKind(String given, String wanted, String help) implements Verdict {}

    /**
     * Read, but not yet to be judged: a digit or a unit more has to be typed. No try is lost.
     *
     * @param taken how the answer was understood
     * @param words what to type besides, and why
     */
    record More(Taken taken, String words) implements Verdict {}

    /**
     * Not readable as an answer at all.
     *
     * @param words what could not be read and what would be
     */
    record Unreadable(String words) implements Verdict {}

    /**
     * A prediction, noted without judging.
     *
     * @param taken how it was understood
     */
    record Noted(Taken taken) implements Verdict {}

    /**
     * A decision, ready to go into the design.
     *
     * @param value what the design change is to be given: a number in the exercise's unit, or one of its options
     * @param taken how it was understood
     */
    record Decided(String value, Taken taken) implements Verdict {}

    /**
     * How an answer was understood.
     *
     * @param words the answer in words, such as {@code 1.2 US gal/min}
     * @param value the number in the exercise's unit; empty for a choice, where {@code words} says all
     * @param unitAssumed true where no unit was given and the exercise's own was taken
     */
    record Taken(String words, OptionalDouble value, boolean unitAssumed) {

        static Taken text(String words) {
            return new Taken(words, OptionalDouble.empty(), false);
        }

        static Taken number(String words, double value, boolean unitAssumed) {
            return new Taken(words, OptionalDouble.of(value), unitAssumed);
        }
    }
}
