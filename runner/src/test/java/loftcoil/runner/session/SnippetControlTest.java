package loftcoil.runner.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.lang.reflect.InvocationTargetException;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.Test;

class SnippetControlTest {

    private static final AtomicReference<Thread> COUNTS = new AtomicReference<>();

    /** What the thread that started the piece does when the piece begins; JShell calls a piece without arguments. */
    static String stateOfTheOther() {
        return COUNTS.get().getState().name();
    }

    static void fails() {
        throw new IllegalStateException("of the piece");
    }

    @Test
    void aPieceBeginsWhenItsThreadsHaveBeenCountedSoThatNoneItLeavesIsWaitedFor() throws Exception {
        COUNTS.set(Thread.currentThread());
        SnippetControl control = new SnippetControl(new SnippetStreams());
        for (int i = 0; i < 100; i++) {
            assertEquals("\"WAITING\"", control.invoke(getClass().getDeclaredMethod("stateOfTheOther")));
        }
    }

    @Test
    void whatAPieceThrowsComesOutAsItIs() {
        SnippetControl control = new SnippetControl(new SnippetStreams());
        InvocationTargetException thrown = assertThrows(
                InvocationTargetException.class, () -> control.invoke(getClass().getDeclaredMethod("fails")));
        assertEquals("of the piece", thrown.getCause().getMessage());
    }
}
