package loftcoil.bench;

import java.io.File;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.stream.Collectors;
import jdk.jshell.JShell;
import jdk.jshell.Snippet;
import jdk.jshell.SnippetEvent;
import jdk.jshell.SourceCodeAnalysis.CompletionInfo;
import loftcoil.runner.session.SessionSetup;

/** JShell as it comes, running snippets within this process, with the same prelude. The thing to compare with. */
final class BareShell implements AutoCloseable {

    private final JShell shell;

    BareShell(SessionSetup setup) {
        String path = setup.classPath().stream().map(Path::toString).collect(Collectors.joining(File.pathSeparator));
        shell = JShell.builder()
                .executionEngine("local")
                .compilerOptions("-classpath", path)
                .build();
        run(setup.prelude());
    }

    /** Runs each statement in turn, as JShell's own documentation says to. */
    void run(String source) {
        // Snippets share this process's standard output; the table must not be among what they print.
        PrintStream table = System.out;
        System.setOut(new PrintStream(OutputStream.nullOutputStream(), false, StandardCharsets.UTF_8));
        try {
            runPieces(source);
        } finally {
            System.setOut(table);
        }
    }

    private void runPieces(String source) {
        String rest = source;
        while (!rest.isBlank()) {
            CompletionInfo info = shell.sourceCodeAnalysis().analyzeCompletion(rest);
            if (!info.completeness().isComplete()) {
                return;
            }
            for (SnippetEvent event : shell.eval(info.source())) {
                if (event.status() == Snippet.Status.REJECTED || event.exception() != null) {
                    throw new IllegalStateException(info.source() + " failed: " + event);
                }
            }
            rest = info.remaining();
        }
    }

    @Override
    public void close() {
        shell.close();
    }
}
