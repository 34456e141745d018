package loftcoil.runner.terminal;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import org.jline.reader.Completer;

/** Plays a learner: types given lines, keeps what was said. */
final class ScriptedConsole implements Console {

    private final Deque<String> typed = new ArrayDeque<>();
    private final List<String> said = new ArrayList<>();
    private final List<String> shown = new ArrayList<>();
    private final List<List<String>> screens = new ArrayList<>();
    private int columns;
    private int rows;

    ScriptedConsole(String... lines) {
        typed.addAll(List.of(lines));
    }

    /** A learner before a screen of that size, who reads all of it. */
    static ScriptedConsole on(int columns, int rows, List<String> lines) {
        ScriptedConsole console = new ScriptedConsole(lines.toArray(String[]::new));
        console.columns = columns;
        console.rows = rows;
        return console;
    }

    @Override
    public int width() {
        return columns == 0 ? 70 : columns - 2;
    }

    @Override
    public int columns() {
        return columns;
    }

    @Override
    public int rows() {
        return rows;
    }

    @Override
    public void say(String text) {
        print(text);
    }

    @Override
    public void head(String text) {
        print(text);
    }

    @Override
    public void warn(String text) {
        print(text);
    }

    private void print(String text) {
        said.add(text);
        text.lines().forEach(shown::add);
        if (text.isEmpty()) {
            shown.add("");
        }
    }

    @Override
    public Optional<String> ask(String prompt) {
        said.add(prompt);
        shown.add(prompt);
        screens.add(List.copyOf(shown));
        shown.clear();
        return prompt.equals(Pages.MORE) ? Optional.of("") : Optional.ofNullable(typed.poll());
    }

    @Override
    public Optional<String> edit(String text, Completer completer) {
        said.add(text);
        return Optional.ofNullable(typed.poll());
    }

    /** Holds that no line that can be broken is wider than the screen, and that no more than it holds came between two prompts. */
    void assertAllReadable() {
        for (List<String> screen : screens) {
            String all = String.join("\n", screen);
            screen.forEach(line -> assertTrue(
                    line.length() <= columns || !line.strip().contains(" "), line + "\nis too wide in\n" + all));
            int used = screen.stream()
                    .mapToInt(line -> Math.max(1, (line.length() + columns - 1) / columns))
                    .sum();
            assertTrue(used <= rows, used + " rows at once:\n" + all);
        }
    }

    String all() {
        return String.join("\n", said);
    }

    int left() {
        return typed.size();
    }
}
