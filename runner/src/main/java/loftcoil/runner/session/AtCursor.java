package loftcoil.runner.session;

import jdk.jshell.SourceCodeAnalysis;

/**
 * The piece of a snippet at the cursor, with the variables of the same snippet before it, so that names not yet run
 * complete too.
 *
 * @param text what is analysed
 * @param cursor where the cursor is in it
 * @param shift how much further on the piece stands in the snippet than in {@code text}
 */
record AtCursor(String text, int cursor, int shift) {

    static AtCursor in(SourceCodeAnalysis analysis, String source, int cursor) {
        PieceSplitter pieces = new PieceSplitter(analysis, source);
        StringBuilder before = new StringBuilder();
        while (pieces.hasNext()) {
            Piece piece = pieces.next();
            int end = pieces.position();
            if (cursor <= end || !pieces.hasNext()) {
                int from = Math.min(piece.offset(), cursor);
                String text = before + source.substring(from, cursor);
                return new AtCursor(text, text.length(), from - before.length());
            }
            if (canStandInFront(analysis, piece)) {
                before.append(piece.source()).append('\n');
            }
        }
        return new AtCursor("", 0, cursor);
    }

    /** Only variables can be followed by a statement in one analysis; methods, types and imports cannot. */
    private static boolean canStandInFront(SourceCodeAnalysis analysis, Piece piece) {
        return analysis.sourceToSnippets(piece.source()).stream()
                .allMatch(snippet -> snippet.kind() == jdk.jshell.Snippet.Kind.VAR
                        && snippet.subKind() != jdk.jshell.Snippet.SubKind.TEMP_VAR_EXPRESSION_SUBKIND);
    }

    int toSource(int offset) {
        return Math.max(0, offset + shift);
    }
}
