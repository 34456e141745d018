package loftcoil.runner.cli;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import loftcoil.engine.fault.RefusedException;

/** The refusal of a file or folder given on the command line. */
final class RefusedFile {

    private RefusedFile() {}

    static RefusedException of(Path file, String what, String allowed) {
        return RefusedException.of(file.toString(), what, allowed);
    }

    /** For a file or folder that could not be written. */
    static RefusedException unwritable(Path file, IOException why, String allowed) {
        return of(file, "cannot be written (" + plain(why) + ")", allowed);
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
