package loftcoil.runner.terminal;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.jline.reader.Completer;
import org.jspecify.annotations.Nullable;

/**
 * A console on which nothing scrolls past unread: when the screen is full it waits. Whatever is longer than a line is broken at a
 * space, prompts too. Where the screen has no known height nothing waits. A line that was meant for the next question can be given
 * back to it.
 */
final class Pages implements Console {

    /** What is asked when the screen is full. */
    static final String MORE = "[More: Enter goes on, s skips the rest] ";

    private final Console console;
    private @Nullable String given;
    private int used;
    private boolean skipping;

    Pages(Console console) {
        this.console = console;
    }

    /** The next question gets this line. */
    void giveBack(String typed) {
        given = typed;
    }

    @Override
    public int width() {
        return console.width();
    }

    @Override
    public int columns() {
        return console.columns();
    }

    @Override
    public int rows() {
        return console.rows();
    }

    @Override
    public void say(String text) {
        each(text, false, console::say);
    }

    /** What fits on one screen is not cut in two: a drawing, a table. */
    @Override
    public void say(List<String> lines) {
        int wanted = lines.stream()
                .flatMap(line -> Wrap.kept(line, width()).stream())
                .mapToInt(this::rowsOf)
                .sum();
        if (wanted < rows() && !skipping) {
            room(wanted, false);
        }
        lines.forEach(this::say);
    }

    @Override
    public void head(String text) {
        each(text, true, console::head);
    }

    /** What can hurt is said even where the rest is skipped. */
    @Override
    public void warn(String text) {
        each(text, true, console::warn);
    }

    private void each(String text, boolean always, Consumer<String> print) {
        // A text that ends with a line end has a blank line after it, as printing it would.
        for (String line : text.split("\n", -1)) {
            for (String part : Wrap.kept(line, width())) {
                if (!skipping || always) {
                    room(rowsOf(part), always);
                }
                if (!skipping || always) {
                    print.accept(part);
                    used += rowsOf(part);
                }
            }
        }
    }

    /** Waits where what comes next would push something off the screen that nobody has had time to read. */
    private void room(int wanted, boolean always) {
        if (rows() <= 0 || used == 0 || used + wanted < rows()) {
            return;
        }
        used = 0;
        Optional<String> typed = console.ask(MORE).map(String::strip);
        if (always || typed.filter(String::isEmpty).isPresent()) {
            return;
        }
        skipping = true;
        typed.filter(line -> !line.equals("s")).ifPresent(this::giveBack);
    }

    private int rowsOf(String line) {
        int columns = columns();
        return columns <= 0 ? 1 : Math.max(1, (line.length() + columns - 1) / columns);
    }

    @Override
    public Optional<String> ask(String prompt) {
        List<String> lines = Wrap.kept(prompt.stripTrailing(), width());
        lines.subList(0, lines.size() - 1).forEach(line -> each(line, true, console::say));
        room(1, true);
        fresh();
        if (given != null) {
            String line = given;
            given = null;
            return Optional.of(line);
        }
        return console.ask(lines.get(lines.size() - 1) + (prompt.endsWith(" ") ? " " : ""));
    }

    @Override
    public Optional<String> edit(String text, Completer completer) {
        fresh();
        return console.edit(text, completer);
    }

    @Override
    public <T> T running(Supplier<T> work, Runnable stop) {
        // A run that lasts says so, in a line of its own.
        used++;
        return console.running(work, stop);
    }

    private void fresh() {
        used = 0;
        skipping = false;
    }
}
