package loftcoil.runner.progress;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
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
            return new Usable(ProgressJson.read(TextFile.read(file, SafeFile.LONGEST_BYTES)));
        } catch (TextFile.TooLongException e) {
            return new Unusable(SafeFile.tooLong(e));
        } catch (CharacterCodingException e) {
            return new Unusable("it is not UTF-8 text");
        } catch (IOException e) {
            return new Unusable("it cannot be read (" + e.getClass().getSimpleName() + ")");
        } catch (ProgressJson.UnreadableException e) {
            return new Unusable(String.valueOf(e.getMessage()));
        }
    }
}
