package loftcoil.runner.progress;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.time.LocalDate;
import java.time.ZoneId;

/**
 * A file that is always whole: new text is written aside, forced to the disk, and moved into place in one step. Whoever
 * holds this holds the folder's lock.
 */
final class SafeFile {

    /** Longest file, in bytes. Years of work in every lesson come to less than a hundredth of it. */
    static final long LONGEST_BYTES = 16_000_000;

    private final Path file;

    SafeFile(Path file) {
        this.file = file;
    }

    /** Replaces the file. On any trouble the old one is untouched. */
    void write(byte[] bytes) {
        if (bytes.length > LONGEST_BYTES) {
            throw new FolderException(
                    FolderException.Why.TOO_LARGE,
                    file,
                    bytes.length + " bytes; at most " + LONGEST_BYTES + " are kept");
        }
        Path aside = file.resolveSibling(file.getFileName() + ".new");
        try {
            try (FileChannel channel = FileChannel.open(
                    aside, StandardOpenOption.CREATE, StandardOpenOption.TRUNCATE_EXISTING, StandardOpenOption.WRITE)) {
                ByteBuffer left = ByteBuffer.wrap(bytes);
                while (left.hasRemaining()) {
                    channel.write(left);
                }
                channel.force(true);
            }
            Files.move(aside, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException e) {
            throw noAccess("cannot be written", e, "; the file from before is untouched");
        }
        forceFolder();
    }

    /** The day on which the file was last written, where this machine is. */
    LocalDate day() {
        try {
            return LocalDate.ofInstant(Files.getLastModifiedTime(file).toInstant(), ZoneId.systemDefault());
        } catch (IOException e) {
            throw noAccess("cannot be looked at", e, "");
        }
    }

    /** Moves the file to that name with its own ending, and a number where that is taken; never over another. */
    Path rename(String stem) {
        String name = file.getFileName().toString();
        String ending = name.substring(name.lastIndexOf('.'));
        try {
            Path free = file.resolveSibling(stem + ending);
            for (int i = 2; Files.exists(free, LinkOption.NOFOLLOW_LINKS); i++) {
                free = file.resolveSibling(stem + "-" + i + ending);
            }
            Files.move(file, free);
            forceFolder();
            return free;
        } catch (IOException e) {
            throw noAccess("cannot be renamed", e, "");
        }
    }

    /** Moves the file to the first free name of its kind, such as {@code progress.damaged-1.json}; never over another. */
    Path setAside(String kind) {
        String name = file.getFileName().toString();
        int dot = name.lastIndexOf('.');
        try {
            for (int i = 1; ; i++) {
                Path free = file.resolveSibling(name.substring(0, dot) + "." + kind + "-" + i + name.substring(dot));
                if (!Files.exists(free, LinkOption.NOFOLLOW_LINKS)) {
                    Files.move(file, free);
                    forceFolder();
                    return free;
                }
            }
        } catch (IOException e) {
            throw noAccess("cannot be read and cannot be set aside", e, "; move it away by hand");
        }
    }

    private FolderException noAccess(String what, IOException why, String then) {
        String words = what + " (" + why.getClass().getSimpleName() + ")" + then;
        return new FolderException(FolderException.Why.NO_ACCESS, file, words);
    }

    /** So that a loss of power does not undo the move. Some systems cannot do this for folders; there it is left out. */
    private void forceFolder() {
        Path folder = file.toAbsolutePath().getParent();
        if (folder != null) {
            try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
                channel.force(true);
            } catch (IOException e) {
                // The file itself is on the disk; only its name may be the old one after a loss of power.
            }
        }
    }
}
