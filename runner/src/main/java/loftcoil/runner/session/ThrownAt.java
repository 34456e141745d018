package loftcoil.runner.session;

import java.util.Map;
import java.util.Scanner;
import jdk.jshell.JShellException;

/** Finds the line of the learner's snippet that an exception came from. */
final class ThrownAt {

    private ThrownAt() {}

    /** True where it was a scanner that had nothing to read. */
    static boolean reading(JShellException thrown) {
        StackTraceElement[] stack = thrown.getStackTrace();
        return stack.length > 0 && stack[0].getClassName().equals(Scanner.class.getName());
    }

    /** The innermost line within the given pieces, from 1; 0 where none of them is in the stack. */
    static int line(JShellException thrown, Map<String, Piece> byId, LineIndex places) {
        for (StackTraceElement element : thrown.getStackTrace()) {
            String file = element.getFileName();
            // JShell writes the number of the evaluated piece where a file name would stand: "#12".
            if (file != null && file.startsWith("#")) {
                Piece piece = byId.get(file.substring(1));
                if (piece != null && element.getLineNumber() > 0) {
                    return places.line(piece.offset()) + element.getLineNumber() - 1;
                }
            }
        }
        return 0;
    }
}
