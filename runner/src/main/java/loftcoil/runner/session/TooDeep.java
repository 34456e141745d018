package loftcoil.runner.session;

/** Java that is nested deeper than the compiler can follow: its own calls run out of stack. */
final class TooDeep {

    /** Stands where the compiler has no key of its own. */
    static final String CODE = "compiler.err.too.deep";

    private TooDeep() {}

    /** True where an error of the compiler means this. */
    static boolean is(Error e) {
        return e instanceof StackOverflowError || String.valueOf(e.getMessage()).contains("StackOverflowError");
    }
}
