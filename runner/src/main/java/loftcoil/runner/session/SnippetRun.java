package loftcoil.runner.session;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import jdk.jshell.EvalException;
import jdk.jshell.ExpressionSnippet;
import jdk.jshell.JShellException;
import jdk.jshell.Snippet;
import jdk.jshell.SnippetEvent;
import jdk.jshell.UnresolvedReferenceException;
import jdk.jshell.VarSnippet;
import loftcoil.runner.session.words.Unfinished;

/** One snippet, piece by piece, until it ends, fails or is ended. */
final class SnippetRun {

    private final Shell shell;
    private final String source;
    private final int from;
    private final RunningNow running;
    private final LineIndex places;
    private final Findings findings;
    private final long began = System.nanoTime();
    private final Map<String, Piece> byId = new HashMap<>();
    private final List<Snippet> unsettled = new ArrayList<>();
    private final List<DonePiece> done = new ArrayList<>();
    private String value = "";
    private String type = "";

    SnippetRun(Shell shell, String source, RunningNow running) {
        this(shell, source, 0, running);
    }

    /** Runs only what starts at an offset or after it. */
    SnippetRun(Shell shell, String source, int from, RunningNow running) {
        this.shell = shell;
        this.source = source;
        this.from = from;
        this.running = running;
        this.places = new LineIndex(source);
        this.findings = new Findings(shell, places);
    }

    /** Runs it. What it printed and drew is read from the shell's own account. */
    Outcome outcome() {
        Optional<Unfinished.Open> deep = Unfinished.tooDeep(source, from);
        if (deep.isPresent()) {
            return notJava(findings.tooDeep(deep.get().offset()));
        }
        PieceSplitter pieces = new PieceSplitter(shell.analysis(), source, from);
        while (pieces.hasNext()) {
            if (running.cause().isPresent()) {
                return stopped(running.cause().get());
            }
            Optional<Outcome> end = next(pieces);
            if (end.isPresent()) {
                return end.get();
            }
        }
        List<Outcome.Problem> unknown = unsettledProblems();
        return unknown.isEmpty() ? new Outcome.Done(trace(), value, type) : notJava(unknown);
    }

    /** Runs the next piece; the compiler itself calls its methods as deep as the Java is nested. */
    private Optional<Outcome> next(PieceSplitter pieces) {
        int at = pieces.position();
        try {
            Piece piece = pieces.next();
            return piece.whole() ? evaluate(piece) : Optional.of(notJava(findings.unfinished(piece)));
        } catch (StackOverflowError | InternalError e) {
            if (!TooDeep.is(e)) {
                throw e;
            }
            shell.spoil();
            return Optional.of(notJava(findings.tooDeep(at)));
        }
    }

    /** The pieces that ran to their end. */
    List<DonePiece> done() {
        return List.copyOf(done);
    }

    /** Runs one piece; empty where the snippet goes on after it. */
    private Optional<Outcome> evaluate(Piece piece) {
        shell.control().takeInvocations();
        List<SnippetEvent> events;
        try {
            events = shell.eval(piece.source());
        } catch (IllegalStateException e) {
            // The machine ended before this piece began.
            return Optional.of(stopped(running.cause().orElse(Outcome.Cause.EXIT)));
        }
        if (running.cause().isPresent() || shell.ended()) {
            return Optional.of(stopped(running.cause().orElse(Outcome.Cause.EXIT)));
        }
        SnippetEvent event = Shell.main(events);
        Snippet snippet = event.snippet();
        byId.put(snippet.id(), piece);
        if (event.status() == Snippet.Status.REJECTED) {
            return Optional.of(notJava(findings.of(snippet, piece)));
        }
        JShellException thrown = event.exception();
        if (thrown != null) {
            return Optional.of(threw(thrown, snippet, piece));
        }
        if (shell.withoutCode(event)) {
            shell.spoil();
            return Optional.of(notJava(findings.of(snippet, piece)));
        }
        if (Shell.lost(event)) {
            shell.spoil();
            return Optional.of(stopped(Outcome.Cause.EXIT));
        }
        if (event.status() != Snippet.Status.VALID) {
            unsettled.add(snippet);
        }
        remember(event, piece);
        return Optional.empty();
    }

    private void remember(SnippetEvent event, Piece piece) {
        Snippet snippet = event.snippet();
        type = typeOf(snippet);
        value = type.isEmpty() || event.value() == null ? "" : ValueText.of(event.value(), type);
        done.add(new DonePiece(
                piece, DonePiece.declaredBy(snippet), type, shell.control().takeInvocations()));
    }

    private static String typeOf(Snippet snippet) {
        if (snippet instanceof VarSnippet variable) {
            // A name that is given nothing has no value yet, whatever Java puts there.
            boolean given = variable.subKind() != Snippet.SubKind.VAR_DECLARATION_SUBKIND;
            return given ? variable.typeName() : "";
        }
        return snippet instanceof ExpressionSnippet expression ? expression.typeName() : "";
    }

    private Outcome threw(JShellException thrown, Snippet snippet, Piece piece) {
        if (thrown instanceof UnresolvedReferenceException unresolved) {
            Piece where = byId.getOrDefault(unresolved.getSnippet().id(), piece);
            List<Outcome.Problem> problems = findings.unresolved(unresolved.getSnippet(), where);
            return notJava(problems.isEmpty() ? findings.of(snippet, piece) : problems);
        }
        String name = thrown instanceof EvalException known ? known.getExceptionClassName() : "Exception";
        if (name.equals(OutOfMemoryError.class.getName())) {
            return stopped(Outcome.Cause.MEMORY);
        }
        String message = thrown.getMessage() == null ? "" : thrown.getMessage();
        if (ThrownAt.reading(thrown)) {
            message = Outcome.Threw.NO_TYPING;
        }
        String simple = name.substring(Math.max(name.lastIndexOf('.'), name.lastIndexOf('$')) + 1);
        return new Outcome.Threw(trace(), simple, message, ThrownAt.line(thrown, byId, places));
    }

    /** Names that no later piece has brought. */
    private List<Outcome.Problem> unsettledProblems() {
        List<Outcome.Problem> problems = new ArrayList<>();
        for (Snippet snippet : unsettled) {
            Snippet.Status status = shell.jshell().status(snippet);
            Piece piece = byId.get(snippet.id());
            if (piece != null
                    && (status == Snippet.Status.RECOVERABLE_DEFINED
                            || status == Snippet.Status.RECOVERABLE_NOT_DEFINED)) {
                problems.addAll(findings.unresolved(snippet, piece));
            }
        }
        return problems;
    }

    private Outcome notJava(List<Outcome.Problem> problems) {
        return new Outcome.NotJava(trace(), problems);
    }

    private Outcome stopped(Outcome.Cause cause) {
        return new Outcome.Stopped(trace(), cause, running.computedMillis());
    }

    private Outcome.Trace trace() {
        return shell.received().trace((System.nanoTime() - began) / 1_000_000);
    }
}
