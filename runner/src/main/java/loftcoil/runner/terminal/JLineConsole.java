package loftcoil.runner.terminal;

import java.io.IOException;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.ScheduledFuture;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import org.jline.reader.Completer;
import org.jline.reader.EOFError;
import org.jline.reader.EndOfFileException;
import org.jline.reader.LineReader;
import org.jline.reader.LineReaderBuilder;
import org.jline.reader.UserInterruptException;
import org.jline.reader.impl.DefaultParser;
import org.jline.terminal.Terminal;
import org.jline.terminal.TerminalBuilder;
import org.jline.utils.AttributedString;
import org.jline.utils.AttributedStyle;

/** The real terminal, through JLine; also plain piped input and output. */
final class JLineConsole implements Console, AutoCloseable {

    private static final int WIDEST = 88;

    /** Where nobody tells the width: fits every terminal, however narrow. */
    private static final int NARROW = 60;

    private final Terminal terminal;
    private final LineReader reader;

    JLineConsole(Terminal terminal) {
        this.terminal = terminal;
        DefaultParser plain = new DefaultParser();
        plain.setEscapeChars(new char[0]);
        plain.setQuoteChars(new char[0]);
        this.reader = LineReaderBuilder.builder()
                .terminal(terminal)
                .parser(plain)
                .option(LineReader.Option.DISABLE_EVENT_EXPANSION, true)
                .variable(LineReader.DISABLE_HISTORY, true)
                .build();
    }

    /**
     * Opens the terminal the process has; a plain stream where it has none.
     *
     * @throws IOException where even that fails
     */
    static JLineConsole open() throws IOException {
        return new JLineConsole(
                TerminalBuilder.builder().system(true).dumb(true).build());
    }

    @Override
    public int width() {
        int columns = dumb() ? columnsTold().orElse(NARROW) : terminal.getWidth();
        return columns <= 0 ? NARROW : Math.max(30, Math.min(WIDEST, columns - 2));
    }

    @Override
    public int columns() {
        return dumb() ? columnsTold().orElse(0) : terminal.getWidth();
    }

    @Override
    public int rows() {
        return dumb() ? 0 : terminal.getHeight();
    }

    private boolean dumb() {
        return terminal.getType().startsWith(Terminal.TYPE_DUMB);
    }

    /** A plain terminal does not tell how wide it is; shells do, where they export it. */
    private static OptionalInt columnsTold() {
        String told = System.getenv("COLUMNS");
        return told != null && told.matches("\\d{1,4}") ? OptionalInt.of(Integer.parseInt(told)) : OptionalInt.empty();
    }

    @Override
    public <T> T running(Supplier<T> work, Runnable stop) {
        Terminal.SignalHandler before = terminal.handle(Terminal.Signal.INT, signal -> stop.run());
        ScheduledExecutorService watch = Executors.newSingleThreadScheduledExecutor(this::background);
        try {
            ScheduledFuture<?> told = watch.schedule(() -> say("Running. Ctrl+C stops it."), 1, TimeUnit.SECONDS);
            T came = work.get();
            told.cancel(false);
            return came;
        } finally {
            watch.shutdownNow();
            terminal.handle(Terminal.Signal.INT, before);
        }
    }

    private Thread background(Runnable deed) {
        Thread thread = new Thread(deed, "says that it runs");
        thread.setDaemon(true);
        return thread;
    }

    @Override
    public void say(String text) {
        terminal.writer().println(text);
        terminal.flush();
    }

    @Override
    public void head(String text) {
        say(new AttributedString(text, AttributedStyle.BOLD).toAnsi(terminal));
    }

    @Override
    public void warn(String text) {
        // Bold in the terminal's own colour: what is yellow on one ground cannot be read on another.
        say(new AttributedString(text, AttributedStyle.BOLD).toAnsi(terminal));
    }

    @Override
    public Optional<String> ask(String prompt) {
        return read(prompt, reader, "");
    }

    @Override
    public Optional<String> edit(String text, Completer completer) {
        LineReader editor = LineReaderBuilder.builder()
                .terminal(terminal)
                .completer(completer)
                .parser(new UntilBlankLine())
                .variable(LineReader.SECONDARY_PROMPT_PATTERN, "      ")
                .variable(LineReader.DISABLE_HISTORY, true)
                .option(LineReader.Option.DISABLE_EVENT_EXPANSION, true)
                .build();
        return read("      ", editor, text).map(String::stripTrailing);
    }

    private static Optional<String> read(String prompt, LineReader reader, String start) {
        try {
            return Optional.of(reader.readLine(prompt, null, (Character) null, start));
        } catch (EndOfFileException | UserInterruptException end) {
            return Optional.empty();
        }
    }

    @Override
    public void close() throws IOException {
        terminal.close();
    }

    /** Enter makes a new line until the last line is blank: then the text is taken. */
    private static final class UntilBlankLine extends DefaultParser {
        UntilBlankLine() {
            setEscapeChars(new char[0]);
            setQuoteChars(new char[0]);
        }

        @Override
        public org.jline.reader.ParsedLine parse(String line, int cursor, ParseContext context) {
            if (context == ParseContext.ACCEPT_LINE && !line.endsWith("\n") && !line.isBlank()) {
                throw new EOFError(-1, cursor, "a blank line ends the text");
            }
            return super.parse(line, cursor, context);
        }
    }
}
