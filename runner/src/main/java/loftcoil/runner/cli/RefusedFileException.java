package loftcoil.runner.cli;

import java.nio.file.Path;

/** Thrown where a file given on the command line cannot be used; the message is one line: file, what is wrong, what is allowed. */
final class RefusedFileException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    RefusedFileException(Path file, String what, String allowed) {
        super(file + ": " + what + "; allowed: " + allowed);
    }

    RefusedFileException(String lines) {
        super(lines);
    }
}
