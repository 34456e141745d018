package loftcoil.runner.session;

import java.io.ObjectInput;
import java.io.ObjectOutput;
import java.util.ArrayList;
import java.util.List;
import jdk.jshell.execution.StreamingExecutionControl;

/**
 * The host's end of the work connection. It stops by the reins, since the work connection answers only after a piece
 * has ended, and it remembers what was invoked, so that an unchanged piece can run again without compiling.
 */
final class HostControl extends StreamingExecutionControl {

    /**
     * One entry into compiled code.
     *
     * @param className class made by JShell
     * @param methodName method of it
     */
    record Invocation(String className, String methodName) {}

    private final AgentProcess agent;
    private final List<Invocation> invocations = new ArrayList<>();

    HostControl(ObjectInput in, ObjectOutput out, AgentProcess agent) {
        super(out, in);
        this.agent = agent;
    }

    @Override
    public String invoke(String className, String methodName)
            throws RunException, EngineTerminationException, InternalException {
        invocations.add(new Invocation(className, methodName));
        return super.invoke(className, methodName);
    }

    /** What was invoked since this was last asked. */
    List<Invocation> takeInvocations() {
        List<Invocation> taken = List.copyOf(invocations);
        invocations.clear();
        return taken;
    }

    /** Nothing to do: the machine was started with the class path of its session. */
    @Override
    public void addToClasspath(String path) {}

    @Override
    public void stop() {
        agent.pull();
    }

    @Override
    public void close() {
        agent.close();
    }
}
