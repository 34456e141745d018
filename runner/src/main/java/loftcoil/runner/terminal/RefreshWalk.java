package loftcoil.runner.terminal;

import java.util.List;
import java.util.Optional;
import loftcoil.runner.progress.AnswerState;
import loftcoil.runner.progress.LessonProgress.Recall;
import loftcoil.runner.show.Refresh;
import loftcoil.runner.show.RefreshView;

/** The refresher in the terminal: one question after the other, then what has faded. */
final class RefreshWalk {

    private final Refresh refresh;
    private final Console console;

    RefreshWalk(Refresh refresh, Console console) {
        this.refresh = refresh;
        this.console = console;
    }

    /** Asks what is left to ask; the lesson to go on with, if the learner wants one. */
    Optional<String> walk() {
        RefreshView.Path path = refresh.path();
        console.head("Refresher  (about " + path.minutes() + " minutes)");
        console.say(path.words());
        if (path.questions().isEmpty()) {
            return Optional.empty();
        }
        if (path.done() && again()) {
            path = refresh.again();
        }
        if (!path.done()) {
            console.say("Enter at a question means: I do not remember. q leaves; what you have answered is kept.");
        }
        for (RefreshView.Question question : path.questions()) {
            if (question.state().isEmpty() && !asked(question)) {
                return Optional.empty();
            }
        }
        return found(refresh.path());
    }

    private boolean again() {
        return console.ask("You have been through it. n begins anew, Enter shows what was found: ")
                .map(String::strip)
                .filter("n"::equals)
                .isPresent();
    }

    /** False where the learner leaves. */
    private boolean asked(RefreshView.Question question) {
        console.say("");
        console.head(question.lesson() + ": " + question.label());
        console.say(PlainText.of(question.markdown(), console.width()));
        for (int i = 0; i < question.options().size(); i++) {
            Wrap.lines("%d. %s".formatted(i + 1, question.options().get(i)), console.width())
                    .forEach(console::say);
        }
        while (true) {
            Optional<String> typed = console.ask(prompt(question)).map(String::strip);
            if (typed.isEmpty() || typed.get().equals("q")) {
                return false;
            }
            RefreshView.Said said = typed.get().isEmpty()
                    ? refresh.forgotten(question.id())
                    : refresh.answer(question.id(), typed.get());
            say(said);
            if (said.state() != AnswerState.UNREAD) {
                return true;
            }
        }
    }

    private static String prompt(RefreshView.Question question) {
        String unit = question.unit().isEmpty() ? "" : " in " + question.unit();
        return question.options().isEmpty()
                ? "Answer" + unit + ": "
                : "Answer, 1 to " + question.options().size() + ": ";
    }

    private void say(RefreshView.Said said) {
        for (String markdown : List.of(said.words(), said.hintMarkdown(), said.workedMarkdown())) {
            if (!markdown.isEmpty()) {
                console.say(PlainText.of(markdown, console.width()));
            }
        }
        if (!said.source().isEmpty()) {
            Wrap.lines("Source: " + said.source(), console.width()).forEach(console::say);
        }
    }

    private Optional<String> found(RefreshView.Path path) {
        console.say("");
        console.head(path.words());
        List<RefreshView.Found> faded = path.lessons().stream()
                .filter(lesson -> lesson.recall() == Recall.FADED)
                .toList();
        for (int i = 0; i < faded.size(); i++) {
            RefreshView.Found lesson = faded.get(i);
            console.say("%3d  %s  (%d min; %s)".formatted(i + 1, lesson.title(), lesson.minutes(), lesson.words()));
        }
        path.lessons().stream()
                .filter(lesson -> lesson.recall() != Recall.FADED)
                .forEach(lesson -> console.say("     still there: " + lesson.title()));
        return faded.isEmpty() ? Optional.empty() : chosen(faded);
    }

    private Optional<String> chosen(List<RefreshView.Found> faded) {
        String typed = console.ask("Number of a lesson to open, or Enter to leave the refresher: ")
                .orElse("")
                .strip();
        for (int i = 0; i < faded.size(); i++) {
            if (typed.equals(Integer.toString(i + 1))) {
                return Optional.of(faded.get(i).id());
            }
        }
        return Optional.empty();
    }
}
