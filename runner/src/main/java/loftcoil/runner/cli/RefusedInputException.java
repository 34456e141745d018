package loftcoil.runner.cli;

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
}
