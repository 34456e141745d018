package loftcoil.runner.session;

import java.io.File;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.Collectors;
import jdk.jshell.Diag;
import jdk.jshell.ExpressionSnippet;
import jdk.jshell.JShell;
import jdk.jshell.PersistentSnippet;
import jdk.jshell.Snippet;
import jdk.jshell.SnippetEvent;
import jdk.jshell.SourceCodeAnalysis;
import jdk.jshell.StatementSnippet;
import jdk.jshell.VarSnippet;
import jdk.jshell.spi.ExecutionControl.EngineTerminationException;
import jdk.jshell.spi.ExecutionControl.InternalException;
import jdk.jshell.spi.ExecutionControl.RunException;

/** A JShell, its Java machine and what comes from it, with the prelude loaded. */
final class Shell implements AutoCloseable {

    private final JShell jshell;
    private final AgentProvider provider;
    private final SnippetOutput received;
    private final EngineNames engine;
    private final AtomicBoolean ended = new AtomicBoolean();
    private final List<Snippet> loaded = new ArrayList<>();
    private final Set<String> opened = new HashSet<>();
    private boolean spoilt;

    private Shell(JShell jshell, AgentProvider provider, SnippetOutput received, EngineNames engine) {
        this.engine = engine;
        this.jshell = jshell;
        this.provider = provider;
        this.received = received;
        jshell.onShutdown(gone -> ended.set(true));
    }

    /**
     * Starts one and loads the prelude.
     *
     * @throws SessionException where the machine does not start or the prelude does not compile
     */
    static Shell open(SessionSetup setup) {
        SnippetOutput received = new SnippetOutput(setup.limits());
        AgentProvider provider = new AgentProvider(setup, received);
        PrintStream nowhere = new PrintStream(OutputStream.nullOutputStream(), false, StandardCharsets.UTF_8);
        String path = setup.named().stream().map(Path::toString).collect(Collectors.joining(File.pathSeparator));
        JShell jshell;
        try {
            jshell = JShell.builder()
                    .executionEngine(provider, null)
                    .out(nowhere)
                    .err(nowhere)
                    .build();
        } catch (IllegalStateException e) {
            throw new SessionException(
                    "Java for snippets could not be started: " + e.getMessage()
                            + ". A JDK 17 or newer is needed, with room for "
                            + setup.limits().memoryMb()
                            + " MB of memory.",
                    e);
        }
        // Not as an option of the compiler, which would look every folder and jar up again for each piece.
        jshell.addToClasspath(path);
        Shell shell = new Shell(jshell, provider, received, EngineNames.in(setup.named()));
        shell.load(setup.prelude());
        return shell;
    }

    private void load(String prelude) {
        PieceSplitter pieces = new PieceSplitter(analysis(), prelude);
        while (pieces.hasNext()) {
            Piece piece = pieces.next();
            SnippetEvent event = main(eval(piece.source()));
            loaded.add(event.snippet());
            if (event.status() == Snippet.Status.REJECTED || event.exception() != null) {
                String why = jshell.diagnostics(event.snippet())
                        .map(diag -> diag.getMessage(Locale.ENGLISH))
                        .collect(Collectors.joining("; "));
                close();
                throw new SessionException("The prelude cannot be loaded: " + piece.source() + ": " + why);
            }
        }
    }

    /** Takes away every name that was declared since the prelude, the last first, so that none is compiled again for another. */
    void clear() {
        List<Snippet> later = new ArrayList<>(jshell.snippets()
                .filter(PersistentSnippet.class::isInstance)
                .filter(snippet -> jshell.status(snippet).isActive())
                .filter(snippet -> !loaded.contains(snippet))
                .toList());
        Collections.reverse(later);
        later.forEach(jshell::drop);
    }

    /** Takes away what declares those names. */
    void drop(Set<String> names) {
        jshell.snippets()
                .filter(PersistentSnippet.class::isInstance)
                .filter(snippet -> jshell.status(snippet).isActive())
                .filter(snippet -> DonePiece.declaredBy(snippet).stream().anyMatch(names::contains))
                .toList()
                .forEach(jshell::drop);
    }

    /** Evaluates one piece, with the engine's types that it names; all that changed. */
    List<SnippetEvent> eval(String source) {
        open(engine.roomsOf(source));
        return jshell.eval(source);
    }

    /** Lets what is typed name every type of the engine. */
    void openEveryRoom() {
        open(engine.packages());
    }

    /** Every import is looked up again for each piece, so that rooms nobody names are left shut. */
    private void open(Set<String> rooms) {
        for (String room : rooms) {
            if (opened.add(room)) {
                loaded.add(main(jshell.eval("import " + room + ".*;")).snippet());
            }
        }
    }

    /** The event of the piece itself among those of an evaluation. */
    static SnippetEvent main(List<SnippetEvent> events) {
        return events.stream()
                .filter(event -> event.causeSnippet() == null)
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("nothing was evaluated"));
    }

    List<Diag> problems(Snippet snippet) {
        return jshell.diagnostics(snippet).filter(Diag::isError).toList();
    }

    JShell jshell() {
        return jshell;
    }

    SourceCodeAnalysis analysis() {
        return jshell.sourceCodeAnalysis();
    }

    SnippetOutput received() {
        return received;
    }

    HostControl control() {
        return provider.control();
    }

    /** Full names of the rooms in which a type of the engine is. */
    Set<String> roomsOf(String type) {
        return engine.roomsOf(type);
    }

    /** Simple names of the engine's own types. */
    Set<String> known() {
        return engine.types();
    }

    /**
     * Ends a run: what its threads print from now on is dropped.
     *
     * @param stopped true where it was ended from outside, so that part of what it printed may still be on its way
     * @return how many threads of snippets live on; 0 where the machine is gone
     */
    int endRun(boolean stopped) {
        try {
            return ended() ? 0 : (Integer) control().extensionCommand(SnippetControl.END_RUN, stopped);
        } catch (RunException | EngineTerminationException | InternalException e) {
            kill();
            return 0;
        }
    }

    /** True where the compiler let a piece pass and then could make no code of it; all later pieces would fail too. */
    boolean withoutCode(SnippetEvent event) {
        return event.status() != Snippet.Status.VALID
                && event.status() != Snippet.Status.REJECTED
                && !problems(event.snippet()).isEmpty();
    }

    /** True where a piece should have come to something, if only to its end, and did not. */
    static boolean lost(SnippetEvent event) {
        boolean runs = event.snippet() instanceof VarSnippet
                || event.snippet() instanceof ExpressionSnippet
                || event.snippet() instanceof StatementSnippet;
        return runs && event.status() == Snippet.Status.VALID && event.exception() == null && event.value() == null;
    }

    /** Says that nothing more may run here. */
    void spoil() {
        spoilt = true;
    }

    /** True where it must be replaced before anything else runs. */
    boolean spoilt() {
        return spoilt;
    }

    /** Processor time of the machine since it started; empty where this system does not tell. */
    Optional<Duration> computed() {
        return provider.agent().computed();
    }

    long pid() {
        return provider.agent().pid();
    }

    /** Asks the running piece to stop; it may not. */
    void stop() {
        provider.control().stop();
    }

    /** Ends the machine, whatever it does; a running evaluation returns. */
    void kill() {
        ended.set(true);
        provider.agent().close();
    }

    /** True once the machine is gone. */
    boolean ended() {
        return ended.get();
    }

    @Override
    public void close() {
        kill();
        jshell.close();
    }
}
