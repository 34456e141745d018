package loftcoil.runner.session;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import jdk.jshell.Snippet;
import jdk.jshell.SourceCodeAnalysis;
import jdk.jshell.VarSnippet;

/**
 * The piece of a snippet at the cursor, with the variables of the same snippet before it, so that names not yet run
 * complete too.
 *
 * @param text what is analysed, up to the cursor
 * @param shift how much further on the piece stands in the snippet than in {@code text}
 * @param declared names of the variables before it that are not part of {@code text}
 */
record AtCursor(String text, int shift, List<String> declared) {

    private static final Pattern ONE_WORD = Pattern.compile("\\s*\\w*");

    static AtCursor in(SourceCodeAnalysis analysis, String source, int cursor) {
        PieceSplitter pieces = new PieceSplitter(analysis, source);
        StringBuilder before = new StringBuilder();
        List<String> declared = new ArrayList<>();
        while (pieces.hasNext()) {
            Piece piece = pieces.next();
            if (cursor <= pieces.position() || !pieces.hasNext()) {
                int from = Math.min(piece.offset(), cursor);
                return of(before.toString(), source.substring(from, cursor), from, declared);
            }
            List<String> names = variables(analysis, piece);
            if (!names.isEmpty()) {
                before.append(piece.source()).append('\n');
                declared.addAll(names);
            }
        }
        return of("", "", cursor, declared);
    }

    private static AtCursor of(String before, String piece, int from, List<String> declared) {
        // Of a statement that is only begun, JShell says nothing where another stands in front.
        return ONE_WORD.matcher(piece).matches()
                ? new AtCursor(piece, from, List.copyOf(declared))
                : new AtCursor(before + piece, from - before.length(), List.of());
    }

    /** Only variables can be followed by a statement in one analysis; methods, types and imports cannot. */
    private static List<String> variables(SourceCodeAnalysis analysis, Piece piece) {
        List<String> names = new ArrayList<>();
        for (Snippet snippet : analysis.sourceToSnippets(piece.source())) {
            if (snippet instanceof VarSnippet variable
                    && variable.subKind() != Snippet.SubKind.TEMP_VAR_EXPRESSION_SUBKIND) {
                names.add(variable.name());
            }
        }
        return names;
    }

    /** The word the cursor stands at the end of; empty where there is none. */
    String word() {
        int start = text.length();
        while (start > 0 && Character.isJavaIdentifierPart(text.charAt(start - 1))) {
            start--;
        }
        return text.substring(start);
    }

    int toSource(int offset) {
        return Math.max(0, offset + shift);
    }
}
