package loftcoil.runner.cli;

/** Starts Loftcoil. */
public final class Loftcoil {

    private Loftcoil() {}

    /**
     * Starts Loftcoil.
     *
     * @param args the command line
     */
    public static void main(String[] args) {
        System.err.println("Loftcoil: not yet");
        System.exit(2);
    }
}
