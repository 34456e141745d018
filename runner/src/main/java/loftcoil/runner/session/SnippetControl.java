package loftcoil.runner.session;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.util.Objects;
import jdk.jshell.execution.LocalExecutionControl;
import org.jspecify.annotations.Nullable;

/** Runs compiled pieces inside the agent, and sets the streams right before and after each. */
final class SnippetControl extends LocalExecutionControl {

    /** Ends a run; the argument tells whether it was stopped. Answers how many threads of snippets are alive. */
    static final String END_RUN = "end run";

    /** Sets a number that a piece reads with {@link DraggedValues#number}; the argument is {@code name=value}. */
    static final String DIAL = "dial";

    private static final Method AFTER_THE_COUNT = afterTheCount();

    private static volatile @Nullable Method piece;
    private static volatile @Nullable Thread counting;

    private final SnippetStreams streams;
    private final int threadsAtStart;

    SnippetControl(SnippetStreams streams) {
        this.streams = streams;
        this.threadsAtStart = Thread.activeCount();
    }

    @Override
    public String invoke(String className, String methodName)
            throws RunException, InternalException, EngineTerminationException {
        return ValueText.fitted(super.invoke(className, methodName));
    }

    /**
     * The JDK's control starts a thread for the piece, counts the threads that live in its group and waits for each of them. A
     * piece that is quick to leave a sleeping thread behind would be waited for until that one wakes, so that none begins before
     * the count is over.
     */
    @Override
    protected String invoke(Method compiled) throws Exception {
        piece = compiled;
        counting = Thread.currentThread();
        return super.invoke(AFTER_THE_COUNT);
    }

    /** Runs the piece once the thread that counts has begun to wait for this one. */
    @SuppressWarnings("unused") // by AFTER_THE_COUNT
    private static @Nullable Object runAfterTheCount() throws Throwable {
        Thread counts = Objects.requireNonNull(counting);
        while (counts.getState() != Thread.State.WAITING) {
            Thread.onSpinWait();
        }
        try {
            return Objects.requireNonNull(piece).invoke(null);
        } catch (InvocationTargetException e) {
            throw e.getCause();
        }
    }

    private static Method afterTheCount() {
        try {
            Method found = SnippetControl.class.getDeclaredMethod("runAfterTheCount");
            found.setAccessible(true);
            return found;
        } catch (NoSuchMethodException e) {
            throw new IllegalStateException(e);
        }
    }

    @Override
    protected void clientCodeEnter() {
        streams.enter();
        super.clientCodeEnter();
    }

    @Override
    protected void clientCodeLeave() {
        super.clientCodeLeave();
        streams.flush();
    }

    @Override
    public Object extensionCommand(String command, Object arg)
            throws RunException, EngineTerminationException, InternalException {
        if (command.equals(END_RUN)) {
            streams.endRun(Boolean.TRUE.equals(arg));
            return Math.max(0, Thread.activeCount() - threadsAtStart);
        }
        if (command.equals(DIAL)) {
            DraggedValues.set(String.valueOf(arg));
            return "";
        }
        return super.extensionCommand(command, arg);
    }
}
