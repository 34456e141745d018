package loftcoil.runner.cli;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.DesignJson;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.fault.RefusedException;
import loftcoil.runner.progress.TextFile;

/** Reads a design from a file, or says in one line a fault why not. */
final class DesignFile {

    private static final int LONGEST_BYTES = 1_000_000;

    private DesignFile() {}

    /**
     * Reads a design.
     *
     * @param file a JSON file in UTF-8
     * @throws RefusedException with every fault: field path first, the file last
     */
    static Design read(Path file) {
        String json = text(file);
        try {
            return DesignJson.read(json);
        } catch (RefusedException refused) {
            throw new RefusedException(refused.faults().stream()
                    .map(fault -> new Fault(fault.path(), fault.given(), fault.allowed(), why(fault, file)))
                    .toList());
        }
    }

    /** The path of the field stays first on the line. */
    private static String why(Fault fault, Path file) {
        return (fault.why().isEmpty() ? "" : fault.why() + "; ") + "in " + file;
    }

    private static String text(Path file) {
        return text(file, "a design file, JSON", LONGEST_BYTES);
    }

    /**
     * The text of a file.
     *
     * @param what what the file has to be, for a refusal
     * @param longestBytes how long it may be
     * @throws RefusedException where it is missing, too long, or no text
     */
    static String text(Path file, String what, int longestBytes) {
        try {
            if (Files.isDirectory(file)) {
                throw RefusedFile.of(file, "a folder", what);
            }
            return TextFile.read(file, longestBytes);
        } catch (TextFile.TooLongException tooLong) {
            throw RefusedFile.of(
                    file,
                    String.valueOf(tooLong.getMessage()),
                    what.replace(", JSON", "") + " of at most " + longestBytes + " bytes");
        } catch (NoSuchFileException missing) {
            throw RefusedFile.of(file, "no such file", "the path of " + what.replace(", JSON", ""));
        } catch (CharacterCodingException notText) {
            throw RefusedFile.of(file, "not UTF-8 text", what + " in UTF-8");
        } catch (IOException unreadable) {
            throw RefusedFile.of(file, "cannot be read (" + unreadable.getMessage() + ")", "a readable file");
        }
    }
}
