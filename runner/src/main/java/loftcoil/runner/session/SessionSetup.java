package loftcoil.runner.session;

import java.nio.file.Path;
import java.util.List;

/**
 * What a session starts with.
 *
 * @param classPath folders and jars of the machine that snippets run in
 * @param named those of them whose types snippets may name; a compiler looks through each, which takes long where there are many
 * @param prelude Java that stands before everything: imports and small helpers; empty where none
 * @param limits what one run may take
 */
public record SessionSetup(List<Path> classPath, List<Path> named, String prelude, Limits limits) {

    /** Keeps its own copy. */
    public SessionSetup {
        classPath = List.copyOf(classPath);
        named = List.copyOf(named);
    }

    /** The class path of this program, the imports of the lessons and the usual limits. */
    public static SessionSetup usual() {
        return new SessionSetup(
                SnippetClassPath.find(), SnippetClassPath.named(), Prelude.ofEverySession(), Limits.usual());
    }
}
