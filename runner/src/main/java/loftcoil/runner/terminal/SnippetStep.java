package loftcoil.runner.terminal;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.words.Units;
import loftcoil.runner.show.LearnerApp;
import loftcoil.runner.show.Slider;
import loftcoil.runner.show.View;
import org.jline.reader.Candidate;
import org.jline.reader.Completer;

/** A piece of Java in the terminal: shown, run, edited, put back. */
final class SnippetStep {

    private final LearnerApp bench;
    private final Console console;
    private final String lessonId;
    private final View.Snippet snippet;
    private final Map<String, Double> dragged = new HashMap<>();
    private String source;
    /** What the learner had written, until the lesson's text is put back for good. */
    private String before = "";

    SnippetStep(LearnerApp bench, Console console, String lessonId, View.Snippet snippet) {
        this.bench = bench;
        this.console = console;
        this.lessonId = lessonId;
        this.snippet = snippet;
        this.source = snippet.source();
        snippet.drag().ifPresent(drag -> dragged.put(drag.variable(), drag.metric(drag.start())));
    }

    Move walk(Function<String, Optional<Move>> common) {
        showSource();
        while (true) {
            Optional<String> reply = console.ask("Java [Enter runs, e edits, s skips, ? more] ");
            if (reply.isEmpty()) {
                return new Move.Leave();
            }
            String typed = reply.get().strip();
            Optional<Move> move = carryOut(typed, common);
            if (move.isPresent()) {
                return move.get();
            }
        }
    }

    private Optional<Move> carryOut(String typed, Function<String, Optional<Move>> common) {
        return switch (typed) {
            case "" -> runsWell() ? Optional.of(new Move.On()) : Optional.empty();
            case "s" -> Optional.of(new Move.On());
            case "e" -> stay(this::edit);
            case "o" -> stay(this::putBack);
            case "v" -> stay(this::setDragged);
            case "l" -> stay(() -> show(List.of()));
            default -> common.apply(typed);
        };
    }

    private static Optional<Move> stay(Runnable deed) {
        deed.run();
        return Optional.empty();
    }

    private void putBack() {
        if (source.equals(snippet.original()) && !before.isEmpty()) {
            source = before;
            before = "";
            bench.keep(lessonId, snippet.id(), source);
            console.say("Your text is back.");
        } else {
            before = source.equals(snippet.original()) ? "" : source;
            source = bench.putBack(lessonId, snippet.id()).source();
            console.say(
                    before.isEmpty() ? "It is the lesson's text." : "The lesson's text is back; o again brings yours.");
        }
        showSource();
    }

    private void edit() {
        Completer completer =
                (reader, line, candidates) -> bench.complete(lessonId, snippet.id(), line.line(), line.cursor())
                        .forEach(suggestion -> candidates.add(new Candidate(
                                line.line().substring(wordStart(line.line(), line.cursor()), suggestion.from())
                                        + suggestion.text())));
        console.say("Edit; a blank line ends the text, Tab completes, Ctrl+C leaves it as it was.");
        Optional<String> edited = console.edit(source, completer);
        if (edited.isEmpty()) {
            console.say("Left as it was.");
            return;
        }
        source = edited.get();
        before = "";
        runsWell();
    }

    private static int wordStart(String line, int cursor) {
        int start = cursor;
        while (start > 0 && !Character.isWhitespace(line.charAt(start - 1))) {
            start--;
        }
        return start;
    }

    private void setDragged() {
        if (snippet.drag().isEmpty()) {
            console.say("This Java has no value to drag.");
            return;
        }
        Slider drag = snippet.drag().get();
        String typed = console.ask(drag.label() + " (" + drag.range() + "): ")
                .orElse("")
                .strip();
        try {
            dragged.put(drag.variable(), drag.read(typed));
        } catch (RefusedException refused) {
            console.say(String.join("; ", refused.lines()));
            return;
        }
        runsWell();
    }

    /** Preparation is left out of sight unless the learner has changed the text or asks for it. */
    private void showSource() {
        show(source.equals(snippet.source()) ? snippet.folds() : List.of());
    }

    private void show(List<View.Fold> folds) {
        List<String> lines = source.lines().toList();
        for (int i = 0; i < lines.size(); i++) {
            int line = i + 1;
            Optional<View.Fold> fold =
                    folds.stream().filter(each -> each.from() == line).findFirst();
            if (fold.isPresent()) {
                console.say("     | … %d lines of preparation; l shows them"
                        .formatted(fold.get().count()));
                i = fold.get().to() - 1;
            } else {
                console.say("%4d | %s".formatted(line, lines.get(i)));
            }
        }
        snippet.drag()
                .ifPresent(drag -> console.say("       %s: %s, %s (v sets it)%s"
                        .formatted(
                                drag.variable(),
                                drag.words(
                                        drag.shown(dragged.getOrDefault(drag.variable(), drag.metric(drag.start())))),
                                drag.label(),
                                drag.isMetric() ? "" : "; Java has it in metric units")));
    }

    /** Runs and prints what came of it; true where it ran to its end. */
    private boolean runsWell() {
        View.Run run = console.running(() -> bench.run(lessonId, snippet.id(), source, dragged), bench::stop);
        if (bench.units() == Units.US && !run.printed().isBlank()) {
            console.say("Java prints in metric (SI) units:");
        }
        RunText.lines(run, console.width()).forEach(console::say);
        if (run.state() != View.RunState.DONE) {
            console.warn(run.words());
            run.problems()
                    .forEach(problem -> console.warn(
                            "  line %d, column %d: %s".formatted(problem.line(), problem.column(), problem.words())));
            return false;
        }
        return true;
    }
}
