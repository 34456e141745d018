package loftcoil.runner.terminal;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.jline.reader.Completer;

/** Lines out and lines in: what the terminal face needs of a terminal, so that tests can play one. */
interface Console {

    /** Greatest useful line length, in characters. */
    int width();

    /** Columns of the screen, in characters; 0 where nobody tells. */
    default int columns() {
        return 0;
    }

    /** Rows of the screen; 0 where there is none, as into a file or a pipe: then nothing scrolls past unread. */
    default int rows() {
        return 0;
    }

    /** Prints text and a line end. */
    void say(String text);

    /** Prints a heading, set off from what follows. */
    void head(String text);

    /** Prints a line in a warning tone. The words must carry the meaning: not every terminal has colours. */
    void warn(String text);

    /**
     * Asks for a line.
     *
     * @param prompt what to ask
     * @return the line without its end; empty where there is no more input or the learner broke off
     */
    Optional<String> ask(String prompt);

    /**
     * Lets the learner edit text of several lines.
     *
     * @param text what stands there at the start
     * @param completer ways to go on typing
     * @return the text as left; empty where the learner broke off
     */
    Optional<String> edit(String text, Completer completer);

    /**
     * Does something that may take long. Meanwhile Ctrl+C stops it, and only it; after a second the learner is told so.
     *
     * @param work what is done
     * @param stop stops it; called from another thread, perhaps more than once
     */
    default <T> T running(Supplier<T> work, Runnable stop) {
        return work.get();
    }

    /** Prints each line. */
    default void say(List<String> lines) {
        lines.forEach(this::say);
    }
}
