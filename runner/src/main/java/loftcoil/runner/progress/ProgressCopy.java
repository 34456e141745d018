package loftcoil.runner.progress;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** A learner's progress file, read by somebody else: it is only looked at, never moved, locked or changed. */
public sealed interface ProgressCopy {

    /**
     * It can be used.
     *
     * @param progress what the learner has done
     */
    record Usable(Progress progress) implements ProgressCopy {}

    /**
     * It cannot.
     *
     * @param why in words, to stand after the file's name
     */
    record Unusable(String why) implements ProgressCopy {}

    /**
     * Reads a file.
     *
     * @param file a learner's {@code progress.json}, or a copy of it under another name
     */
    static ProgressCopy read(Path file) {
        try {
            long size = Files.size(file);
            if (size > SafeFile.LONGEST_BYTES) {
                return new Unusable(size + " bytes is more than the " + SafeFile.LONGEST_BYTES + " that are read");
            }
            ByteBuffer bytes = ByteBuffer.wrap(Files.readAllBytes(file));
            String text = StandardCharsets.UTF_8.newDecoder().decode(bytes).toString();
            return new Usable(ProgressJson.read(text));
        } catch (CharacterCodingException e) {
            return new Unusable("it is not UTF-8 text");
        } catch (IOException e) {
            return new Unusable("it cannot be read (" + e.getClass().getSimpleName() + ")");
        } catch (ProgressJson.UnreadableException e) {
            return new Unusable(String.valueOf(e.getMessage()));
        }
    }
}
