package loftcoil.runner.session;

import loftcoil.engine.fault.Refusal;

/** Thrown where no Java machine for snippets can be had, or where the host itself asks it for something impossible. */
public final class SessionException extends Refusal {

    private static final long serialVersionUID = 1L;

    /**
     * Says what could not be done.
     *
     * @param message what failed and what would help
     */
    public SessionException(String message) {
        super(message);
    }

    /**
     * Says what could not be done.
     *
     * @param message what failed and what would help
     * @param cause what was met underneath
     */
    public SessionException(String message, Throwable cause) {
        super(message, cause);
    }

    @Override
    public Kind kind() {
        return Kind.NO_MACHINE;
    }
}
