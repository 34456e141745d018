package loftcoil.runner.session;

import jdk.jshell.execution.LocalExecutionControl;

/** Runs compiled pieces inside the agent, and sets the streams right before and after each. */
final class SnippetControl extends LocalExecutionControl {

    /** Ends a run; the argument tells whether it was stopped. Answers how many threads of snippets are alive. */
    static final String END_RUN = "end run";

    /** Sets a number that a piece reads with {@link DraggedValues#number}; the argument is {@code name=value}. */
    static final String DIAL = "dial";

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
