package loftcoil.runner.exercise;

/** Thrown where Java gives no number. The message says why, for the person who wrote that Java. */
public final class ReckoningException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    /**
     * With the reason.
     *
     * @param words one line on what went wrong
     */
    public ReckoningException(String words) {
        super(words);
    }
}
