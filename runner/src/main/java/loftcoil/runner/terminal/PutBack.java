package loftcoil.runner.terminal;

import java.util.Optional;
import org.jline.reader.Completer;
import org.jspecify.annotations.Nullable;

/** A console to which a line that was meant for the next question can be given back. */
final class PutBack implements Console {

    private final Console console;
    private @Nullable String line;

    PutBack(Console console) {
        this.console = console;
    }

    /** The next question gets this line. */
    void giveBack(String typed) {
        line = typed;
    }

    @Override
    public Optional<String> ask(String prompt) {
        String given = line;
        line = null;
        return given == null ? console.ask(prompt) : Optional.of(given);
    }

    @Override
    public int width() {
        return console.width();
    }

    @Override
    public void say(String text) {
        console.say(text);
    }

    @Override
    public void head(String text) {
        console.head(text);
    }

    @Override
    public void warn(String text) {
        console.warn(text);
    }

    @Override
    public Optional<String> edit(String text, Completer completer) {
        return console.edit(text, completer);
    }
}
