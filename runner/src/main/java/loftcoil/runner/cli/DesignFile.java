package loftcoil.runner.cli;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.stream.Collectors;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.DesignJson;
import loftcoil.engine.fault.RefusedException;

/** Reads a design from a file, or says in one line a fault why not. */
final class DesignFile {

    private static final long LONGEST_BYTES = 1_000_000;

    private DesignFile() {}

    /**
     * Reads a design.
     *
     * @param file a JSON file in UTF-8
     * @throws RefusedInputException with every fault: field path first, the file last
     */
    static Design read(Path file) {
        String json = text(file);
        try {
            return DesignJson.read(json);
        } catch (RefusedException refused) {
            throw new RefusedInputException(refused.faults().stream()
                    .map(fault -> fault.line() + "; file " + file)
                    .collect(Collectors.joining("\n")));
        }
    }

    private static String text(Path file) {
        try {
            if (Files.isDirectory(file)) {
                throw new RefusedInputException(file, "a folder", "a design file, JSON");
            }
            long size = Files.size(file);
            if (size > LONGEST_BYTES) {
                throw new RefusedInputException(file, size + " bytes", "a design file of at most 1000000 bytes");
            }
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(Files.readAllBytes(file)))
                    .toString();
        } catch (NoSuchFileException missing) {
            throw new RefusedInputException(file, "no such file", "the path of a design file");
        } catch (CharacterCodingException notText) {
            throw new RefusedInputException(file, "not UTF-8 text", "a design file, JSON in UTF-8");
        } catch (IOException unreadable) {
            throw new RefusedInputException(
                    file, "cannot be read (" + unreadable.getMessage() + ")", "a readable file");
        }
    }
}
