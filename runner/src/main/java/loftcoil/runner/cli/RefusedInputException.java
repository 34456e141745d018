package loftcoil.runner.cli;

import java.io.IOException;
import java.nio.file.Path;

/** Thrown where what was given on the command line cannot be used: one line a fault, with what is allowed. */
final class RefusedInputException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    RefusedInputException(Path file, String what, String allowed) {
        super(file + ": " + what + "; allowed: " + allowed);
    }

    RefusedInputException(String lines) {
        super(lines);
    }

    /** For a file or folder that could not be written. */
    static RefusedInputException unwritable(Path file, IOException why, String allowed) {
        return new RefusedInputException(
                file, "cannot be written (" + why.getClass().getSimpleName() + ")", allowed);
    }
}
