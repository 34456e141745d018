package loftcoil.runner.session;

import java.io.IOException;
import java.util.Map;
import jdk.jshell.execution.Util;
import jdk.jshell.spi.ExecutionControl;
import jdk.jshell.spi.ExecutionControlProvider;
import jdk.jshell.spi.ExecutionEnv;
import org.jspecify.annotations.Nullable;

/**
 * Gives JShell our own Java machine for snippets. The one it would start by itself sends each command in several small
 * packets that wait for each other, about 40 ms a time, and it outlives a host that is killed.
 */
final class AgentProvider implements ExecutionControlProvider {

    private final SessionSetup setup;
    private final SnippetOutput received;
    private @Nullable AgentProcess agent;
    private @Nullable HostControl control;

    AgentProvider(SessionSetup setup, SnippetOutput received) {
        this.setup = setup;
        this.received = received;
    }

    @Override
    public String name() {
        return "loftcoil";
    }

    @Override
    public ExecutionControl generate(ExecutionEnv env, Map<String, String> parameters) throws IOException {
        AgentProcess started =
                AgentProcess.start(setup.classPath(), setup.limits().memoryMb());
        agent = started;
        return Util.remoteInputOutput(
                started.in(),
                started.out(),
                Map.of(
                        SnippetAgent.PRINTED, received.printedStream(),
                        SnippetAgent.CHARTS, received.chartStream()),
                Map.of(),
                (in, out) -> {
                    HostControl made = new HostControl(in, out, started);
                    control = made;
                    return made;
                });
    }

    AgentProcess agent() {
        if (agent == null) {
            throw new IllegalStateException("not started");
        }
        return agent;
    }

    HostControl control() {
        if (control == null) {
            throw new IllegalStateException("not started");
        }
        return control;
    }
}
