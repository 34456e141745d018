package loftcoil.runner.session;

import java.util.HashSet;
import java.util.Set;
import java.util.regex.Pattern;
import jdk.jshell.Snippet;
import jdk.jshell.SourceCodeAnalysis;
import loftcoil.runner.session.words.Unfinished;

/** Reads, without running anything, which names some Java declares. */
final class StillDeclared {

    private StillDeclared() {}

    /**
     * Which of some names the Java declares. Where it cannot be read, every name that stands in the rest counts as declared: it
     * does not run there, so it cannot have meant to give the name up.
     */
    static Set<String> in(SourceCodeAnalysis analysis, String source, Set<String> names) {
        if (Unfinished.tooDeep(source, 0).isPresent()) {
            return names;
        }
        Set<String> found = new HashSet<>();
        PieceSplitter pieces = new PieceSplitter(analysis, source);
        while (pieces.hasNext()) {
            Piece piece = pieces.next();
            boolean readable = piece.whole();
            for (Snippet snippet : analysis.sourceToSnippets(piece.source())) {
                readable = readable && snippet.kind() != Snippet.Kind.ERRONEOUS;
                found.addAll(DonePiece.declaredBy(snippet));
            }
            if (!readable) {
                String rest = source.substring(piece.offset());
                names.stream().filter(name -> mentions(rest, name)).forEach(found::add);
                break;
            }
        }
        return found;
    }

    /** A name is kept with its kind before it and, of a method, its parameters after it. */
    private static boolean mentions(String java, String name) {
        String word = name.replaceFirst("^\\w+ ", "").replaceFirst("\\(.*", "");
        return Pattern.compile("\\b" + Pattern.quote(word) + "\\b")
                .matcher(java)
                .find();
    }
}
