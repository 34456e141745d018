package loftcoil.runner.session;

import java.util.Set;
import jdk.jshell.ImportSnippet;
import jdk.jshell.MethodSnippet;
import jdk.jshell.Snippet;
import jdk.jshell.TypeDeclSnippet;
import jdk.jshell.VarSnippet;

/** What a piece declares, as names that tell a variable from a method or a type of the same name. */
final class Declared {

    private Declared() {}

    /** At most one name; empty for statements and for values without a name of their own. */
    static Set<String> by(Snippet snippet) {
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
