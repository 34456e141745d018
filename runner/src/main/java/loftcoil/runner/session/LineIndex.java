package loftcoil.runner.session;

/** Turns offsets of a snippet into lines and columns, both counted from 1. */
final class LineIndex {

    private final String source;

    LineIndex(String source) {
        this.source = source;
    }

    /** Line of an offset; offsets beyond the end count as the end. */
    int line(int offset) {
        int end = Math.min(offset, source.length());
        int line = 1;
        for (int i = 0; i < end; i++) {
            if (source.charAt(i) == '\n') {
                line++;
            }
        }
        return line;
    }

    /** Column of an offset in its line. */
    int column(int offset) {
        int end = Math.min(Math.max(offset, 0), source.length());
        return end - source.lastIndexOf('\n', end - 1);
    }

    String source() {
        return source;
    }
}
