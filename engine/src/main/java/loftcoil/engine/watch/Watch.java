package loftcoil.engine.watch;

/** Whoever waits for years and starts: is told what is being worked out and how far it is, and may end it. */
public interface Watch {

    /** Waits to the end and wants to hear nothing. */
    Watch NONE = new Watch() {};

    /**
     * What is being worked out. Called by the thread that works.
     *
     * @param stage what it is
     * @param done parts of it that are done, 0 to {@code of}
     * @param of parts of it in all
     */
    default void at(Stage stage, int done, int of) {}

    /** Whether to end. Asked between two parts. */
    default boolean cancelled() {
        return false;
    }

    /**
     * Tells how far it is, and ends where that is wanted.
     *
     * @throws StoppedException where it is wanted
     */
    default void pass(Stage stage, int done, int of) {
        if (cancelled()) {
            throw new StoppedException(stage);
        }
        at(stage, done, of);
    }

    /** Thrown through the work that was ended before its end; nothing of it is kept. */
    final class StoppedException extends RuntimeException {

        private static final long serialVersionUID = 1L;

        StoppedException(Stage at) {
            super("stopped while working out " + at.words());
        }
    }

    /** What is worked out for a whole sheet, in this order; where a design lacks something its stage is passed over. */
    enum Stage {
        /** The year with the heat as stated, or as best estimated. */
        YEAR("the year", 0, 30),
        /** The same with the least heat. */
        LEAST("the year with the least heat from the fire", 30, 50),
        /** The same with the most heat. */
        MOST("the year with the most heat from the fire", 50, 70),
        /** Weather that a mean day has not. */
        WEEKS("clear and dull weeks", 70, 80),
        /** Fires lit after rests. */
        STARTS("fires lit after rests", 80, 98),
        /** What follows from them. */
        SHEET("parts, cuts and the first hour", 98, 100);

        private final String words;
        private final int from;
        private final int to;

        Stage(String words, int from, int to) {
            this.words = words;
            this.from = from;
            this.to = to;
        }

        /** What it is, to stand in a sentence. */
        public String words() {
            return words;
        }

        /** How far the whole is, in hundredths, when that much of this stage is done; by what the stages take as a rule. */
        public int percent(int done, int of) {
            return from + (to - from) * done / of;
        }
    }
}
