package loftcoil.runner.session;

import java.time.Duration;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicLong;
import java.util.concurrent.locks.ReentrantLock;
import javax.tools.ToolProvider;
import org.jspecify.annotations.Nullable;

/**
 * A learner's running Java: snippets share their names, and one that is ended from outside takes nothing of the others
 * with it. Calls may come from several threads; snippets run one at a time.
 *
 * <p>Threads that a snippet starts may live on after it; what they print and draw from then on is dropped, so that it never
 * stands under another snippet. Where more than {@value #THREADS_LEFT} live on, the Java machine is replaced.
 */
public final class Session implements AutoCloseable {

    private static final int THREADS_LEFT = 16;

    /** Ample for one answer over the loopback; this only bounds a hang. */
    private static final Duration ANSWERS = Duration.ofSeconds(30);

    private final SessionSetup setup;
    private final Spare spare;
    private final Replay replay = new Replay();
    private final ReentrantLock lock = new ReentrantLock();
    private final Thread atExit = new Thread(this::endMachines, "session end");
    private volatile @Nullable Shell shell;
    private volatile @Nullable RunningNow running;
    private volatile boolean closed;
    private final AtomicLong stops = new AtomicLong();
    private final QuickRerun quick = new QuickRerun();

    private Session(SessionSetup setup, Spare spare) {
        this.setup = setup;
        this.spare = spare;
    }

    /**
     * Opens a session that starts its Java machine when it is first used, and from then on keeps a spare one ready.
     *
     * @throws SessionException where this Java has no compiler or no {@code jdk.jshell}
     */
    public static Session open(SessionSetup setup) {
        return open(setup, new Spare(setup));
    }

    /**
     * Opens a session that keeps no second machine ready. For work that waits for
     * nobody and is not expected to end its machine, as the starting of one takes longer than most snippets.
     *
     * @throws SessionException where this Java has no compiler or no {@code jdk.jshell}
     */
    public static Session openWithoutSpare(SessionSetup setup) {
        return open(setup, new Spare(setup, false));
    }

    /** Opens a session whose shells come from here. */
    static Session open(SessionSetup setup, Spare spare) {
        requireJdk();
        Session session = new Session(setup, spare);
        Runtime.getRuntime().addShutdownHook(session.atExit);
        return session;
    }

    private static void requireJdk() {
        boolean compiler = ToolProvider.getSystemJavaCompiler() != null;
        boolean shell = ModuleLayer.boot().findModule("jdk.jshell").isPresent();
        if (!compiler || !shell) {
            throw new SessionException("Snippets need a whole JDK, 17 or newer; this Java at "
                    + System.getProperty("java.home") + " has no "
                    + (compiler ? "jdk.jshell, which runs them." : "compiler."));
        }
    }

    /**
     * Runs a snippet.
     *
     * @param stepId name of the step it belongs to; running a step again replaces what it left
     * @param source the Java
     * @throws SessionException where no Java machine can be had
     */
    public Outcome run(String stepId, String source) {
        return run(stepId, source, stops());
    }

    /**
     * Runs a snippet, unless something was stopped since. So whoever stops work of several runs, or a run that still waits for its Java
     * machine, stops all of it.
     *
     * @param stepId name of the step it belongs to
     * @param source the Java
     * @param since how often it had been stopped ({@link #stops}) when the work was asked for
     * @throws SessionException where no Java machine can be had
     */
    public Outcome run(String stepId, String source, long since) {
        return locked(() -> {
            Shell now = shell();
            Optional<Outcome> again = quick.run(now, stepId, source, shell -> start(shell, since));
            if (again.isEmpty()) {
                forgetGone(now, stepId, source);
            }
            Outcome outcome = again.isPresent() ? again.get() : runPieces(now, stepId, source, since);
            settle(now, outcome);
            return outcome;
        });
    }

    /**
     * Takes away what this step declared when it ran before and its text no longer declares, so that a name that was changed
     * is not answered with its old value. What another step declares by that name stands again.
     */
    private void forgetGone(Shell now, String stepId, String source) {
        String step = "step " + stepId;
        Set<String> before = replay.declaredBy(step);
        if (before.isEmpty()) {
            return;
        }
        Set<String> gone = new HashSet<>(before);
        gone.removeAll(StillDeclared.in(now.analysis(), source, before));
        if (gone.isEmpty()) {
            return;
        }
        quick.forget();
        replay.forget(step, gone);
        now.drop(gone);
        replay.pieces().stream()
                .filter(piece -> piece.declares().stream().anyMatch(gone::contains))
                .forEach(piece -> now.eval(piece.piece().source()));
    }

    private Outcome runPieces(Shell now, String stepId, String source, long since) {
        try (RunningNow watched = start(now, since)) {
            SnippetRun run = new SnippetRun(now, source, watched);
            Outcome outcome = run.outcome();
            replay.keep("step " + stepId, run.done());
            quick.learn(stepId, source, run.done(), outcome);
            return outcome;
        } finally {
            end(now);
        }
    }

    /**
     * Gives a variable a value from outside. It is in every later machine of this session too. Where the variable is
     * there already with the same type it is only assigned.
     *
     * @param javaType its Java type, such as {@code double} or {@code Design}
     * @param name its name
     * @param javaExpression its value
     * @throws SessionException where that does not compile or throws
     */
    public void bind(String javaType, String name, String javaExpression) {
        lockedDo(() -> {
            Shell now = shell();
            if (quick.turn(now, javaType, name, javaExpression)) {
                replay.keep("bound " + name, declaration(javaType, name, javaExpression));
                return;
            }
            boolean there = now.jshell()
                    .variables()
                    .anyMatch(v -> v.name().equals(name) && v.typeName().equals(javaType));
            String source = (there ? "" : javaType + " ") + name + " = " + javaExpression + ";";
            Outcome outcome;
            try (RunningNow watched = start(now)) {
                outcome = new SnippetRun(now, source, watched).outcome();
            } finally {
                end(now);
            }
            if (!there) {
                quick.forget();
            }
            settle(now, outcome);
            if (!(outcome instanceof Outcome.Done)) {
                throw new SessionException(
                        name + " cannot be given the value " + javaExpression + ": " + OutcomeWords.of(outcome));
            }
            replay.keep("bound " + name, declaration(javaType, name, javaExpression));
        });
    }

    /** The declaration that brings the variable back in a fresh machine. */
    private static List<DonePiece> declaration(String javaType, String name, String javaExpression) {
        Piece piece = new Piece(javaType + " " + name + " = " + javaExpression + ";", 0, true);
        return List.of(new DonePiece(piece, Set.of("variable " + name), javaType, List.of()));
    }

    /** Evaluates an expression that is never replayed. */
    Outcome look(String javaExpression) {
        return locked(() -> {
            Shell now = shell();
            Outcome outcome;
            try (RunningNow watched = start(now)) {
                SnippetRun run = new SnippetRun(now, javaExpression, watched);
                outcome = run.outcome();
                quick.mindNames(run.done());
            } finally {
                end(now);
            }
            settle(now, outcome);
            return outcome;
        });
    }

    /** Offset at which the last piece of some Java starts. */
    int lastPieceOf(String source) {
        return locked(() -> {
            PieceSplitter pieces = new PieceSplitter(shell().analysis(), source);
            int last = 0;
            while (pieces.hasNext()) {
                last = pieces.position();
                pieces.next();
            }
            return last;
        });
    }

    /** Ways to go on typing at the cursor, best first; empty while a snippet runs. */
    public List<Suggestion> complete(String source, int cursor) {
        return whenFree(now -> new Completion(now).suggest(source, cursor), List.of());
    }

    /** How often it was stopped so far. */
    public long stops() {
        return stops.get();
    }

    /** Ends the snippet that is running now, if any. Returns at once; the run comes back soon after. */
    public void stop() {
        stops.incrementAndGet();
        RunningNow now = running;
        if (now != null) {
            now.end(Outcome.Cause.ASKED);
        }
    }

    /** Starts again with the prelude only. */
    public void forget() {
        lockedDo(() -> {
            replay.clear();
            Shell old = shell;
            shell = null;
            quick.forget();
            if (old != null) {
                spare.giveBack(old);
            }
        });
    }

    /** Process number of the Java machine in use, for tests; starts one where there is none. */
    long pid() {
        return locked(() -> shell().pid());
    }

    /** Ends all machines of this session. */
    @Override
    public void close() {
        closed = true;
        stop();
        endMachines();
        try {
            Runtime.getRuntime().removeShutdownHook(atExit);
        } catch (IllegalStateException e) {
            // The program is ending already, and the hook with it.
            return;
        }
    }

    private void endMachines() {
        spare.close();
        Shell now = shell;
        if (now == null) {
            return;
        }
        if (!lock.tryLock()) {
            // Something still runs in it.
            now.close();
            return;
        }
        try {
            shell = null;
            spare.giveBack(now);
        } finally {
            lock.unlock();
        }
    }

    private RunningNow start(Shell now) {
        return start(now, stops());
    }

    private RunningNow start(Shell now, long since) {
        RunningNow started = new RunningNow(now, setup.limits());
        running = started;
        now.received().open(() -> started.end(Outcome.Cause.OUTPUT));
        if (stops() != since) {
            started.end(Outcome.Cause.ASKED);
        }
        return started;
    }

    private void end(Shell now) {
        running = null;
        now.received().close();
    }

    /** Replaces the machine where the run has lost or spoilt it. */
    private void settle(Shell now, Outcome outcome) {
        boolean outOfMemory = outcome instanceof Outcome.Stopped stopped && stopped.cause() == Outcome.Cause.MEMORY;
        boolean crowded = threadsLeft(now, outcome instanceof Outcome.Stopped) > THREADS_LEFT;
        if (now.ended() || now.spoilt() || outOfMemory || crowded) {
            drop();
            if (!closed) {
                shell();
            }
        }
        spare.prepare();
    }

    /** A run that was stopped in the middle of sending may have left a connection on which no answer comes. */
    private static int threadsLeft(Shell now, boolean stopped) {
        try (RunningNow watched = new RunningNow(now, ANSWERS)) {
            int left = now.endRun(stopped);
            return watched.cause().isEmpty() ? left : Integer.MAX_VALUE;
        }
    }

    private void drop() {
        Shell old = shell;
        shell = null;
        quick.forget();
        if (old != null) {
            old.close();
        }
    }

    /** The machine in use; a fresh one is brought to the state of the last. */
    private Shell shell() {
        Shell now = shell;
        if (now == null || now.ended()) {
            drop();
            now = new MachineRestore(spare, replay, setup.limits()).shell();
            shell = now;
            if (closed) {
                now.close();
            }
        }
        return now;
    }

    private interface Work<T> {
        T in(Shell now);
    }

    private <T> T whenFree(Work<T> work, T otherwise) {
        if (!lock.tryLock()) {
            return otherwise;
        }
        try {
            return work.in(shell());
        } finally {
            lock.unlock();
        }
    }

    private <T> T locked(java.util.function.Supplier<T> work) {
        lock.lock();
        try {
            return work.get();
        } finally {
            lock.unlock();
        }
    }

    private void lockedDo(Runnable work) {
        locked(() -> {
            work.run();
            return true;
        });
    }
}
