package loftcoil.runner.progress;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.FileSystemLoopException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;

/**
 * A file that is always whole: new text is written aside, forced to the disk, and moved into place in one step. Whoever
 * holds this holds the folder's lock.
 */
final class SafeFile {

    /** Longest file, in bytes. Years of work in every lesson come to less than a hundredth of it. */
    static final int LONGEST_BYTES = 16_000_000;

    /** As many as systems follow. */
    private static final int MOST_LINKS = 40;

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
                    bytes.length + " bytes; at most " + LONGEST_BYTES
                            + " are kept. Put back or shorten the longest Java of the lessons; the file from before is"
                            + " untouched");
        }
        try {
            Path target = target();
            replace(target, target.resolveSibling(target.getFileName() + ".new"), bytes);
        } catch (IOException e) {
            throw notWritten(e, bytes.length);
        }
        forceFolder();
    }

    private static void replace(Path target, Path aside, byte[] bytes) throws IOException {
        boolean whole = false;
        try {
            try (FileChannel channel = FileChannel.open(
                    aside, StandardOpenOption.CREATE, StandardOpenOption.TRUNCATE_EXISTING, StandardOpenOption.WRITE)) {
                ByteBuffer left = ByteBuffer.wrap(bytes);
                while (left.hasRemaining()) {
                    channel.write(left);
                }
                channel.force(true);
            }
            Held.patiently(() ->
                    Files.move(aside, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING));
            whole = true;
        } finally {
            if (!whole) {
                dropQuietly(aside);
            }
        }
    }

    /** Half a file would take the room that is missing. */
    private static void dropQuietly(Path aside) {
        try {
            Files.deleteIfExists(aside);
        } catch (IOException e) {
            // The trouble that led here is told; this adds nothing to it.
        }
    }

    /** The file itself, or what it links to: a learner's link to another disk stays a link. */
    private Path target() throws IOException {
        Path at = file;
        for (int links = 0; Files.isSymbolicLink(at); links++) {
            if (links == MOST_LINKS) {
                throw new FileSystemLoopException(file.toString());
            }
            at = at.resolveSibling(Files.readSymbolicLink(at));
        }
        return at;
    }

    private FolderException notWritten(IOException why, int bytes) {
        Path folder = file.toAbsolutePath().getParent();
        if (folder == null || !full(folder, why, bytes)) {
            return noAccess(
                    "cannot be written",
                    why,
                    ". See that its folder can be written; the file from before is untouched");
        }
        return new FolderException(
                FolderException.Why.FULL,
                folder,
                "its disk is full. Free some room on it; the file from before is untouched");
    }

    /** Systems say it in words of their own, and in the learner's language: what room is left says it everywhere. */
    private static boolean full(Path folder, IOException why, int bytes) {
        if (String.valueOf(why.getMessage()).contains("No space left")) {
            return true;
        }
        try {
            return Files.getFileStore(folder).getUsableSpace() < bytes;
        } catch (IOException e) {
            return false;
        }
    }

    /** For a file that is longer than is read, in words to stand after its name. */
    static String tooLong(TextFile.TooLongException why) {
        return why.getMessage() + " is more than the " + LONGEST_BYTES + " that are read";
    }

    /** The day on which the file was last written, where this machine is. */
    LocalDate day() {
        try {
            return LocalDate.ofInstant(Files.getLastModifiedTime(file).toInstant(), ZoneId.systemDefault());
        } catch (IOException e) {
            throw noAccess("cannot be looked at", e, "");
        }
    }

    /** The moment at which the file was last written, where this machine is, to the second. */
    String moment() {
        try {
            return LocalDateTime.ofInstant(Files.getLastModifiedTime(file).toInstant(), ZoneId.systemDefault())
                    .truncatedTo(ChronoUnit.SECONDS)
                    .format(DateTimeFormatter.ISO_LOCAL_DATE_TIME);
        } catch (IOException e) {
            throw noAccess("cannot be looked at", e, "");
        }
    }

    /** Changes whenever the file is written; empty where there is no file. */
    String mark() {
        try {
            BasicFileAttributes now = Files.readAttributes(file, BasicFileAttributes.class);
            return now.lastModifiedTime() + " " + now.size() + " " + now.fileKey();
        } catch (IOException e) {
            return "";
        }
    }

    /** Takes the file away; nothing where there is none. */
    void drop() {
        try {
            Files.deleteIfExists(file);
            forceFolder();
        } catch (IOException e) {
            throw noAccess("cannot be taken away", e, "");
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
            throw noAccess("cannot be set aside", e, "; move it away by hand");
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
