package loftcoil.runner.cli;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import loftcoil.engine.fault.Refusal;

/** Thrown where what was given on the command line cannot be used: one line a fault, with what is allowed. */
final class RefusedInputException extends Refusal {

    private static final long serialVersionUID = 1L;

    RefusedInputException(Path file, String what, String allowed) {
        super(file + ": " + what + "; allowed: " + allowed);
    }

    RefusedInputException(String lines) {
        super(lines);
    }

    /** For a file or folder that could not be written. */
    static RefusedInputException unwritable(Path file, IOException why, String allowed) {
        return new RefusedInputException(file, "cannot be written (" + plain(why) + ")", allowed);
    }

    private static String plain(IOException why) {
        if (why instanceof AccessDeniedException) {
            return "you have no right to";
        }
        if (why instanceof NoSuchFileException) {
            return "there is no such place";
        }
        if (why instanceof FileAlreadyExistsException) {
            return "a file of that name is there";
        }
        return why instanceof FileSystemException told && told.getReason() != null
                ? told.getReason()
                : String.valueOf(why.getMessage());
    }
}
