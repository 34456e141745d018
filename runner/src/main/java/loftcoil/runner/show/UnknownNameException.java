package loftcoil.runner.show;

/** Thrown where what was asked for is not there: a lesson, a step, a question, a kept design. The message names it. */
public final class UnknownNameException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    /**
     * With what is not there.
     *
     * @param words one sentence for the person who asked
     */
    public UnknownNameException(String words) {
        super(words);
    }
}
