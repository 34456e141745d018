package loftcoil.runner.terminal;

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

    ScriptedConsole(String... lines) {
        typed.addAll(List.of(lines));
    }

    @Override
    public int width() {
        return 70;
    }

    @Override
    public void say(String text) {
        said.add(text);
    }

    @Override
    public void head(String text) {
        said.add(text);
    }

    @Override
    public void warn(String text) {
        said.add(text);
    }

    @Override
    public Optional<String> ask(String prompt) {
        said.add(prompt);
        return Optional.ofNullable(typed.poll());
    }

    @Override
    public Optional<String> edit(String text, Completer completer) {
        said.add(text);
        return Optional.ofNullable(typed.poll());
    }

    String all() {
        return String.join("\n", said);
    }

    int left() {
        return typed.size();
    }
}
