package loftcoil.badrooms.terminal;

/** Breaks nothing: a terminal may print. */
public final class Prints {

    /** Prints. */
    public void print() {
        System.out.println();
    }
}
