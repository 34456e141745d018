package loftcoil.runner.terminal;

import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import loftcoil.engine.fault.RefusedException;
import loftcoil.runner.show.LearnerApp;
import loftcoil.runner.show.SafetyText;
import loftcoil.runner.show.View;

/** A question, a guess or a decision in the terminal. */
final class QuestionStep {

    private static final Set<String> COMMANDS = Set.of("q", "b", "w", "d", "r", "n", "h", "t", "u", "?");

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
        Optional<String> typed = console.ask("Your Java [e writes it, Enter leaves it for now] ");
        boolean writes = typed.map(String::strip).filter("e"::equals).isPresent();
        if (!writes) {
            return typed;
        }
        Optional<String> written = console.edit(draft, (reader, line, candidates) -> {});
        written.ifPresent(java -> draft = java);
        return written.or(() -> Optional.of("?"));
    }

    private void ask() {
        String word =
                switch (question.asked()) {
                    case "predict" -> "Your guess first";
                    case "decide" -> "Decide";
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
        View.Reply reply = bench.answer(lessonId, question.id(), typed);
        boolean settled = ReplyText.say(console, reply);
        // Who waits here anyway is told the whole verdict, and only it: half of one could read as calm.
        reply.stands().map(View.Stands::safety).map(this::judged).ifPresent(safety -> SafetyText.lines(safety).stream()
                .flatMap(line -> Wrap.lines(line, console.width()).stream())
                .forEach(console::say));
        return settled;
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
