package loftcoil.runner.terminal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import loftcoil.engine.fault.RefusedException;
import loftcoil.runner.show.LearnerApp;
import loftcoil.runner.show.SafetyText;
import loftcoil.runner.show.View;

/** A question, a guess or a decision in the terminal. */
final class QuestionStep {

    private static final Set<String> COMMANDS =
            Set.of("q", "b", "w", "c", "d", "f", "g", "r", "n", "h", "t", "u", "o", "!", "?");

    private final LearnerApp bench;
    private final Console console;
    private final String lessonId;
    private final View.Question question;
    private String draft;

    QuestionStep(LearnerApp bench, Console console, String lessonId, View.Question question) {
        this.bench = bench;
        this.console = console;
        this.lessonId = lessonId;
        this.question = question;
        this.draft = question.reply().map(View.Reply::answer).orElse(question.starter());
    }

    Move walk(Function<String, Optional<Move>> common) {
        ask();
        while (true) {
            Optional<String> reply = question.form().equals("java") ? javaAnswer() : console.ask(prompt());
            if (reply.isEmpty()) {
                return new Move.Leave();
            }
            String typed = reply.get().strip();
            if (typed.isEmpty()) {
                return new Move.On();
            }
            if (COMMANDS.contains(typed)) {
                Optional<Move> move = common.apply(typed);
                if (move.isPresent()) {
                    return move.get();
                }
            } else if (settles(typed)) {
                return new Move.On();
            }
        }
    }

    private Optional<String> javaAnswer() {
        boolean choosable = !question.lines().isEmpty();
        Optional<String> typed = console.ask("Your Java [e writes it, " + (choosable ? "c chooses its lines, " : "")
                + "o begins anew, Enter leaves it] ");
        if (choosable && typed.map(String::strip).filter("c"::equals).isPresent()) {
            return chosenLines();
        }
        if (typed.map(String::strip).filter("o"::equals).isPresent()) {
            draft = question.starter();
            console.say("The lesson's own text stands there again.");
            return Optional.of("?");
        }
        boolean writes = typed.map(String::strip).filter("e"::equals).isPresent();
        if (!writes) {
            return typed;
        }
        Optional<String> written = console.edit(draft, (reader, line, candidates) -> {});
        written.ifPresent(java -> draft = java);
        return written.or(() -> Optional.of("?"));
    }

    /** Asks line by line; what was chosen is one answer. */
    private Optional<String> chosenLines() {
        List<String> chosen = new ArrayList<>();
        for (List<String> line : question.lines()) {
            if (line.size() == 1) {
                console.say("       " + line.get(0).replace("\n", "\n       "));
                chosen.add(line.get(0));
                continue;
            }
            for (int i = 0; i < line.size(); i++) {
                console.say("  %d  | %s".formatted(i + 1, line.get(i).replace("\n", "\n     | ")));
            }
            Optional<Integer> picked = pick(line.size());
            if (picked.isEmpty()) {
                return Optional.of("?");
            }
            chosen.add(line.get(picked.get()));
        }
        return Optional.of(String.join("\n", chosen));
    }

    private Optional<Integer> pick(int size) {
        while (true) {
            Optional<String> typed = console.ask("Which line, 1 to " + size + " (Enter breaks off): ");
            if (typed.isEmpty() || typed.get().isBlank()) {
                return Optional.empty();
            }
            for (int i = 1; i <= size; i++) {
                if (typed.get().strip().equals(Integer.toString(i))) {
                    return Optional.of(i - 1);
                }
            }
        }
    }

    private void ask() {
        String word =
                switch (question.asked()) {
                    case "predict" -> "Your guess first";
                    case "decide" -> "Decide";
                    case "again" -> "From an earlier lesson";
                    default -> "Question";
                };
        console.head(word + ": " + question.label());
        console.say(PlainText.of(question.markdown(), console.width()));
        for (int i = 0; i < question.options().size(); i++) {
            Wrap.lines("%d. %s".formatted(i + 1, question.options().get(i)), console.width())
                    .forEach(console::say);
        }
        if (!question.current().isEmpty()) {
            console.say("In your design now: " + question.current());
        }
        question.reply()
                .ifPresent(reply -> console.say("You answered before: " + reply.answer() + " - " + reply.words()));
    }

    private String prompt() {
        String unit = question.unit().isEmpty() ? "" : " in " + question.unit();
        return question.options().isEmpty()
                ? "Answer" + unit + ": "
                : "Answer, 1 to " + question.options().size() + ": ";
    }

    private boolean settles(String typed) {
        View.Reply reply = console.running(() -> bench.answer(lessonId, question.id(), typed), bench::stop);
        boolean settled = ReplyText.say(console, reply);
        reply.stands().flatMap(View.Stands::effect).ifPresent(quick -> {
            View.Effect whole = effect(quick);
            // What only the year shows was not in the words above.
            if (!whole.danger().equals(quick.danger()) && !whole.danger().isEmpty()) {
                Wrap.lines("With starts and year: " + whole.danger(), console.width())
                        .forEach(console::warn);
            }
            EffectText.lines(whole, console.width()).forEach(console::say);
        });
        // Who waits here anyway is told the whole verdict, and only it: half of one could read as calm.
        reply.stands().map(View.Stands::safety).map(this::judged).ifPresent(safety -> SafetyText.lines(safety).stream()
                .flatMap(line -> Wrap.lines(line, console.width()).stream())
                .forEach(console::say));
        return settled;
    }

    /** With the year, and what was said at once of pipes that moved with it. */
    private View.Effect effect(View.Effect quick) {
        View.Effect whole = bench.effect();
        return whole.number() == quick.number() ? whole.withMoved(quick.moved()) : quick;
    }

    private View.Safety judged(View.Safety quick) {
        try {
            return bench.safety();
        } catch (RefusedException refused) {
            console.warn("The year cannot be judged: " + String.join("; ", refused.lines()));
            return quick;
        }
    }
}
