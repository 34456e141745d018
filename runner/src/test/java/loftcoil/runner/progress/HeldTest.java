package loftcoil.runner.progress;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

/** A file that is held for a moment is written as soon as it is let go; one that stays held is told. */
class HeldTest {

    private final AtomicInteger tries = new AtomicInteger();

    private void heldFor(int times) throws IOException {
        if (tries.incrementAndGet() <= times) {
            throw new AccessDeniedException("progress.json");
        }
    }

    @Test
    void itIsTriedAgainUntilItIsLetGo() throws IOException {
        Held.patiently(() -> heldFor(2), 5, 0);
        assertEquals(3, tries.get());
    }

    @Test
    void whatStaysHeldIsRefusedAsEver() {
        assertThrows(AccessDeniedException.class, () -> Held.patiently(() -> heldFor(99), 5, 0));
        assertEquals(5, tries.get());
    }
}
