package loftcoil.runner.session;

import java.util.Iterator;
import java.util.NoSuchElementException;
import jdk.jshell.SourceCodeAnalysis;
import jdk.jshell.SourceCodeAnalysis.Completeness;
import jdk.jshell.SourceCodeAnalysis.CompletionInfo;

/**
 * Takes a snippet apart. JShell must be given one piece at a time: of two statements in one evaluation it may drop the
 * second without a word.
 */
final class PieceSplitter implements Iterator<Piece> {

    private final SourceCodeAnalysis analysis;
    private final String source;
    private int at;

    PieceSplitter(SourceCodeAnalysis analysis, String source) {
        this(analysis, source, 0);
    }

    /** Begins at an offset where a piece starts. */
    PieceSplitter(SourceCodeAnalysis analysis, String source, int from) {
        this.analysis = analysis;
        this.source = source;
        this.at = afterBlanks(source, from);
    }

    @Override
    public boolean hasNext() {
        return at < source.length();
    }

    @Override
    public Piece next() {
        if (!hasNext()) {
            throw new NoSuchElementException();
        }
        String rest = source.substring(at);
        CompletionInfo info = analysis.analyzeCompletion(rest);
        String remaining = info.remaining() == null ? "" : info.remaining();
        int length = rest.length() - remaining.length();
        boolean readable = info.completeness().isComplete() && length > 0;
        // What cannot be read is one piece to its end; the compiler will say why.
        String text = readable ? rest.substring(0, length) : rest;
        if (info.completeness() == Completeness.COMPLETE_WITH_SEMI) {
            // On a line of its own: the piece may end in a comment.
            text = text.stripTrailing() + "\n;";
        }
        boolean whole = info.completeness() != Completeness.DEFINITELY_INCOMPLETE
                && info.completeness() != Completeness.CONSIDERED_INCOMPLETE;
        Piece piece = new Piece(text, at, whole);
        at = readable ? afterBlanks(source, at + length) : source.length();
        return piece;
    }

    /** Offset just after the last piece and what separates it from the next. */
    int position() {
        return at;
    }

    /** Where Java goes on after white space, comments and stray semicolons; the length where it does not. */
    private static int afterBlanks(String source, int from) {
        int at = from;
        while (at < source.length()) {
            char c = source.charAt(at);
            if (Character.isWhitespace(c) || c == ';') {
                at++;
            } else if (source.startsWith("//", at)) {
                int end = source.indexOf('\n', at);
                at = end < 0 ? source.length() : end + 1;
            } else if (source.startsWith("/*", at) && source.indexOf("*/", at + 2) >= 0) {
                at = source.indexOf("*/", at + 2) + 2;
            } else {
                return at;
            }
        }
        return at;
    }
}
