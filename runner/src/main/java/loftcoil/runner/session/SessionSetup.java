package loftcoil.runner.session;

import java.nio.file.Path;
import java.util.List;

/**
 * What a session starts with.
 *
 * @param classPath folders and jars that snippets may use
 * @param prelude Java that stands before everything: imports and small helpers; empty where none
 * @param limits what one run may take
 */
public record SessionSetup(List<Path> classPath, String prelude, Limits limits) {

    /** Keeps its own copy. */
    public SessionSetup {
        classPath = List.copyOf(classPath);
    }

    /** The class path of this program, the imports of the lessons and the usual limits. */
    public static SessionSetup usual() {
        List<Path> classPath = SnippetClassPath.find();
        return new SessionSetup(classPath, Prelude.ofEverySession(), Limits.usual());
    }
}
