package loftcoil.runner.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Standard output that remembers why it could not be written. Java's own swallows that, so that a sheet sent to a full disk
 * would be lost without a word.
 */
final class StandardOutput extends FilterOutputStream {

    private @Nullable IOException failure;

    StandardOutput(OutputStream out) {
        super(out);
    }

    /** That of this process. */
    static StandardOutput ofProcess() {
        return new StandardOutput(new FileOutputStream(FileDescriptor.out));
    }

    /** Thrown by who would have much left to compute, where nobody reads any more. */
    static final class LostException extends RuntimeException {

        private static final long serialVersionUID = 1L;
    }

    /** Writes to it in the letters of the terminal. */
    PrintWriter writer() {
        return new PrintWriter(this, true, letters());
    }

    @Override
    public synchronized void write(int letter) throws IOException {
        write(new byte[] {(byte) letter}, 0, 1);
    }

    @Override
    public synchronized void write(byte[] bytes, int from, int count) throws IOException {
        try {
            out.write(bytes, from, count);
        } catch (IOException refused) {
            failure = failure == null ? refused : failure;
            throw refused;
        }
    }

    /**
     * What is to be said of what was lost, in one line. Whoever closes a pipe has read enough, so that is no fault.
     */
    synchronized Optional<String> fault() {
        if (failure == null
                || String.valueOf(failure.getMessage()).toLowerCase(Locale.ROOT).contains("pipe")) {
            return Optional.empty();
        }
        return Optional.of("standard output: cannot be written (" + failure.getMessage()
                + "), so what was to be printed is lost; allowed: a terminal, a pipe, or a file with room on its disk");
    }

    private static Charset letters() {
        return Stream.of("stdout.encoding", "sun.stdout.encoding")
                .map(System::getProperty)
                .filter(name -> name != null && Charset.isSupported(name))
                .findFirst()
                .map(Charset::forName)
                .orElseGet(Charset::defaultCharset);
    }
}
