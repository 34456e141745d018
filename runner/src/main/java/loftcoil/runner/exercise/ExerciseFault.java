package loftcoil.runner.exercise;

import loftcoil.engine.fault.Fault;

/**
 * One thing wrong in an exercise file.
 *
 * @param file the file as its writer knows it, such as {@code exercises/01-warm-water/two-legs.json}
 * @param field where in it, outermost first, such as {@code mistakes[1].hint}; a line and column where it is no JSON
 * @param what what stands there and is not allowed; "missing" where there is nothing
 * @param allowed what would be
 */
public record ExerciseFault(String file, String field, String what, String allowed) {

    /** The fault on one line, the place first. */
    public String words() {
        return file + ": " + Fault.placed(field) + ": " + what + "; allowed: " + allowed;
    }
}
