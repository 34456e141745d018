package loftcoil.runner.show;

import loftcoil.engine.fault.Refusal;

/** Thrown where what was asked for is not there: a lesson, a step, a question, a kept design. The message names it. */
public final class UnknownNameException extends Refusal {

    private static final long serialVersionUID = 1L;

    /**
     * With what is not there.
     *
     * @param words one sentence for the person who asked
     */
    public UnknownNameException(String words) {
        super(words);
    }

    @Override
    public Kind kind() {
        return Kind.UNKNOWN_NAME;
    }
}
