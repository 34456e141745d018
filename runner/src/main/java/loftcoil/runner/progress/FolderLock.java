package loftcoil.runner.progress;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/**
 * Holds a folder for one process. The system lets go of the lock when the process ends, however it ends; the empty file
 * stays, because removing it would race with the next process.
 */
final class FolderLock implements AutoCloseable {

    private static final String FILE = "in-use.lock";

    private final FileChannel channel;

    private FolderLock(FileChannel channel) {
        this.channel = channel;
    }

    /** Makes the folder where it is missing, and takes it. */
    static FolderLock take(Path folder) {
        FileChannel channel = open(folder);
        boolean taken = false;
        try {
            FileLock lock = channel.tryLock();
            taken = lock != null;
        } catch (OverlappingFileLockException e) {
            // Taken within this very process: the same to the caller.
        } catch (IOException e) {
            throw new FolderException(
                    FolderException.Why.NO_ACCESS, folder, "cannot be locked (" + e.getMessage() + ")");
        } finally {
            if (!taken) {
                close(channel);
            }
        }
        if (!taken) {
            throw new FolderException(
                    FolderException.Why.IN_USE,
                    folder,
                    "another Loftcoil works in this folder; close that one, or give another folder");
        }
        return new FolderLock(channel);
    }

    private static FileChannel open(Path folder) {
        if (Files.exists(folder) && !Files.isDirectory(folder)) {
            throw new FolderException(
                    FolderException.Why.NO_FOLDER, folder, "is a file; a folder is needed, it is made where missing");
        }
        try {
            Files.createDirectories(folder);
            return FileChannel.open(folder.resolve(FILE), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
        } catch (IOException | UnsupportedOperationException | SecurityException e) {
            throw new FolderException(
                    FolderException.Why.NO_ACCESS,
                    folder,
                    "cannot be written (" + e.getClass().getSimpleName() + "); a folder of your own is needed");
        }
    }

    private static void close(FileChannel channel) {
        try {
            channel.close();
        } catch (IOException e) {
            // Nothing was written through it, so nothing is lost.
        }
    }

    @Override
    public void close() {
        close(channel);
    }
}
