package loftcoil.runner.session;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import jdk.jshell.SnippetEvent;
import jdk.jshell.spi.ExecutionControl.EngineTerminationException;
import jdk.jshell.spi.ExecutionControl.InternalException;
import jdk.jshell.spi.ExecutionControl.RunException;
import jdk.jshell.spi.ExecutionControl.StoppedException;
import jdk.jshell.spi.ExecutionControl.UserException;

/**
 * Runs a snippet again without compiling it, where nothing it was compiled against has changed since: its compiled
 * pieces are entered once more. This is what makes dragging a value quick. Any new declaration makes it forget all, as
 * the compiled pieces may then mean an older name.
 */
final class QuickRerun {

    private static final Pattern NUMBER = Pattern.compile("-?\\d+(\\.\\d+)?([eE]-?\\d+)?");

    private final Map<String, Learned> steps = new HashMap<>();
    private final Map<String, List<HostControl.Invocation>> dials = new HashMap<>();

    private record Learned(String source, List<DonePiece> pieces) {}

    /** Begins the watch over a run. */
    interface Starter {
        RunningNow start(Shell shell);
    }

    void forget() {
        steps.clear();
        dials.clear();
    }

    /** Forgets all where pieces outside any step declared names. */
    void mindNames(List<DonePiece> pieces) {
        if (pieces.stream().anyMatch(piece -> !piece.declares().isEmpty())) {
            forget();
        }
    }

    /** Takes note of a run that was compiled. */
    void learn(String step, String source, List<DonePiece> pieces, Outcome outcome) {
        boolean done = outcome instanceof Outcome.Done;
        boolean declares = pieces.stream().anyMatch(piece -> !piece.declares().isEmpty());
        if (declares || !done) {
            forget();
        }
        boolean repeatable = pieces.stream().noneMatch(QuickRerun::startsEmpty);
        if (done && repeatable) {
            steps.put(step, new Learned(source, pieces));
        } else {
            steps.remove(step);
        }
    }

    /** A variable without a first value is emptied by declaring it again, and only by that. */
    private static boolean startsEmpty(DonePiece piece) {
        return piece.invocations().isEmpty()
                && piece.declares().stream().anyMatch(name -> name.startsWith("variable "));
    }

    /** Runs the step again; empty where it must be compiled. */
    Optional<Outcome> run(Shell shell, String step, String source, Starter starter) {
        Learned learned = steps.get(step);
        if (learned == null || !learned.source().equals(source)) {
            return Optional.empty();
        }
        try (RunningNow running = starter.start(shell)) {
            return Optional.of(new Again(shell, learned, running).outcome());
        } finally {
            shell.received().close();
        }
    }

    /** Sets a number without compiling, or compiles its dial the first time; false where it cannot. */
    boolean turn(Shell shell, String javaType, String name, String javaExpression) {
        if (!javaType.equals("double") || !NUMBER.matcher(javaExpression).matches()) {
            return false;
        }
        try {
            shell.control().extensionCommand(SnippetControl.DIAL, name + "=" + javaExpression);
            List<HostControl.Invocation> known = dials.get(name);
            if (known == null) {
                return makeDial(shell, name);
            }
            for (HostControl.Invocation invocation : known) {
                shell.control().invoke(invocation.className(), invocation.methodName());
            }
            return true;
        } catch (RunException | InternalException | EngineTerminationException e) {
            dials.remove(name);
            return false;
        }
    }

    private boolean makeDial(Shell shell, String name) {
        boolean there = shell.jshell()
                .variables()
                .anyMatch(v -> v.name().equals(name) && v.typeName().equals("double"));
        if (!there) {
            return false;
        }
        shell.control().takeInvocations();
        SnippetEvent event =
                Shell.main(shell.eval(name + " = " + DraggedValues.class.getName() + ".number(\"" + name + "\");"));
        List<HostControl.Invocation> made = shell.control().takeInvocations();
        if (event.exception() != null || made.isEmpty()) {
            return false;
        }
        dials.put(name, made);
        return true;
    }

    /** One such run. */
    private final class Again {

        private final Shell shell;
        private final Learned learned;
        private final RunningNow running;
        private final long began = System.nanoTime();
        private String value = "";
        private String type = "";

        Again(Shell shell, Learned learned, RunningNow running) {
            this.shell = shell;
            this.learned = learned;
            this.running = running;
        }

        Outcome outcome() {
            for (DonePiece piece : learned.pieces()) {
                SnippetOutput.Place before = shell.received().place();
                try {
                    enter(piece);
                } catch (StoppedException e) {
                    if (running.cause().isEmpty()) {
                        // It ended its own thread.
                        shell.spoil();
                    }
                    return stopped(Outcome.Cause.EXIT);
                } catch (EngineTerminationException e) {
                    shell.kill();
                    return stopped(Outcome.Cause.EXIT);
                } catch (RunException | InternalException e) {
                    if (outOfMemory(e)) {
                        return stopped(Outcome.Cause.MEMORY);
                    }
                    // Compiled once more from here, for the account of what it threw and where.
                    shell.received().backTo(before);
                    forget();
                    return new SnippetRun(shell, learned.source(), piece.piece().offset(), running).outcome();
                }
                if (running.cause().isPresent()) {
                    return stopped(Outcome.Cause.ASKED);
                }
            }
            return new Outcome.Done(trace(), value, type);
        }

        private void enter(DonePiece piece) throws RunException, InternalException, EngineTerminationException {
            value = "";
            type = piece.type();
            for (HostControl.Invocation invocation : piece.invocations()) {
                String text = shell.control().invoke(invocation.className(), invocation.methodName());
                value = type.isEmpty() || text == null ? "" : ValueText.of(text, type);
            }
        }

        private boolean outOfMemory(Exception e) {
            return e instanceof UserException user
                    && user.causeExceptionClass().equals(OutOfMemoryError.class.getName());
        }

        private Outcome stopped(Outcome.Cause unlessKnown) {
            return new Outcome.Stopped(trace(), running.cause().orElse(unlessKnown), running.computedMillis());
        }

        private Outcome.Trace trace() {
            return shell.received().trace((System.nanoTime() - began) / 1_000_000);
        }
    }
}
