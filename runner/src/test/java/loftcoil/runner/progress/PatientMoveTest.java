package loftcoil.runner.progress;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PatientMoveTest {

    @TempDir
    private Path folder;

    private int tries;

    /** Fails with these, one a try, then works. */
    private PatientMove.Work failing(List<? extends IOException> with) {
        Deque<IOException> left = new ArrayDeque<>(with);
        return () -> {
            tries++;
            if (!left.isEmpty()) {
                throw left.pop();
            }
        };
    }

    @Test
    void aFileThatAnotherProgramHoldsForAMomentIsMovedAfterIt() throws IOException {
        PatientMove.patiently(failing(List.of(
                new AccessDeniedException("progress.json"),
                new FileSystemException("progress.json", "x", "used by another process"))));

        assertEquals(3, tries);
    }

    @Test
    void oneThatStaysHeldIsToldInTheEnd() {
        List<AccessDeniedException> always = java.util.stream.Stream.generate(() -> new AccessDeniedException("held"))
                .limit(100)
                .toList();

        assertThrows(AccessDeniedException.class, () -> PatientMove.patiently(failing(always)));
        assertEquals(6, tries);
    }

    @Test
    void whatWillNotPassIsToldAtOnce() {
        assertThrows(
                NoSuchFileException.class,
                () -> PatientMove.patiently(failing(List.of(new NoSuchFileException("gone")))));
        assertThrows(
                FileSystemException.class,
                () -> PatientMove.patiently(
                        failing(List.of(new FileSystemException("a", null, "No space left on device")))));
        assertEquals(2, tries);
    }

    @Test
    void aFileIsMoved() throws IOException {
        Path from = Files.writeString(folder.resolve("from"), "text");

        PatientMove.move(from, folder.resolve("to"));

        assertEquals("text", Files.readString(folder.resolve("to")));
    }
}
