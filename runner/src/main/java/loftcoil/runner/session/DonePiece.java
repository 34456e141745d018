package loftcoil.runner.session;

import java.util.List;
import java.util.Set;
import jdk.jshell.ImportSnippet;
import jdk.jshell.MethodSnippet;
import jdk.jshell.Snippet;
import jdk.jshell.TypeDeclSnippet;
import jdk.jshell.VarSnippet;

/**
 * A piece that ran to its end.
 *
 * @param piece the piece
 * @param declares names it declares, with what kind each is
 * @param type the Java type of its value; empty where it has none
 * @param invocations how its compiled code was entered
 */
record DonePiece(Piece piece, Set<String> declares, String type, List<HostControl.Invocation> invocations) {

    DonePiece {
        declares = Set.copyOf(declares);
        invocations = List.copyOf(invocations);
    }

    /** What a snippet declares: at most one name, none for statements and for values without a name of their own. */
    static Set<String> declaredBy(Snippet snippet) {
        if (snippet instanceof VarSnippet variable) {
            boolean named = variable.subKind() != Snippet.SubKind.TEMP_VAR_EXPRESSION_SUBKIND;
            return named ? Set.of("variable " + variable.name()) : Set.of();
        }
        if (snippet instanceof MethodSnippet method) {
            return Set.of("method " + method.name() + "(" + method.parameterTypes() + ")");
        }
        if (snippet instanceof TypeDeclSnippet type) {
            return Set.of("type " + type.name());
        }
        if (snippet instanceof ImportSnippet imported) {
            return Set.of("import " + imported.fullname());
        }
        return Set.of();
    }
}
