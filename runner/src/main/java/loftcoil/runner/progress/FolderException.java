package loftcoil.runner.progress;

import java.nio.file.Path;
import loftcoil.engine.fault.Refusal;

/** Thrown where the learner's folder cannot be used, or a file in it cannot be written. What was there before is still there. */
public final class FolderException extends Refusal {

    private static final long serialVersionUID = 1L;

    private final Why why;
    private final transient Path path;

    /**
     * With the place and the reason.
     *
     * @param why the kind of trouble
     * @param path the folder or file it is about
     * @param words one line: what is wrong, and what would be allowed
     */
    public FolderException(Why why, Path path, String words) {
        super(path + ": " + words);
        this.why = why;
        this.path = path;
    }

    /** The kind of trouble. */
    public Why why() {
        return why;
    }

    /** The folder or file it is about. */
    public Path path() {
        return path;
    }

    /** Kinds of trouble. */
    public enum Why {
        /** There is a file of that name where the folder should be. */
        NO_FOLDER,
        /** The folder cannot be made, read or written. */
        NO_ACCESS,
        /** Another Loftcoil works in this folder. */
        IN_USE,
        /** The disk of the folder is full. */
        FULL,
        /** What is to be kept is larger than what could be read again. */
        TOO_LARGE
    }

    @Override
    public Kind kind() {
        return Kind.FOLDER;
    }
}
