package loftcoil.runner.terminal;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import loftcoil.engine.build.BuildSheet;
import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.words.Units;
import loftcoil.runner.progress.FolderException;
import loftcoil.runner.show.ConductWords;
import loftcoil.runner.show.LearnerApp;
import loftcoil.runner.show.View;

/**
 * Steps a learner through the course in a text terminal. Leaving at any prompt loses nothing: each step is kept as it is
 * done.
 */
public final class TerminalFace {

    /** Where the text of the list begins, in characters. */
    private static final int HELP_TEXT_AT = 7;

    private static final int FOUND_TEXT_AT = 5;
    private static final String UNSAVED = "NOT SAVED: ";

    private static final String HELP =
            """
            Enter  go on; at Java: run it; at a question: leave it for now
            e      edit the Java, then run it (a blank line ends the text)
            o      put the lesson's own Java back; once more, and yours is back
            l      show all lines of the Java
            c      at a question in Java: choose its lines instead of writing them
            v      set the value that can be dragged, then run
            s      skip this Java without running it
            b      back one step
            w      where you are: all lessons; choose one
            d      your loop: drawing in words, and its figures
            c      what would clear the dangers of your loop: a search of some seconds; take of it what you want
            r      the refresher: a quarter of an hour that finds what has faded
            p      your build sheet as a file to print; that takes some seconds and can be stopped
            n      rebuild: an old design and a new one side by side
            h      your house: measure it, station by station
            g      your designs: several, with the history of every change, undo and back to then
            t      what a term means
            o      what is still open in this lesson; go there
            f      find words in lessons, words and questions
            u      units: metric or US
            !      in an emergency: what to do when it hammers, steams, drips or smokes
            ?      this list
            q      leave; all is kept""";

    private final LearnerApp bench;
    private final SheetWriter writer;
    private final Pages console;
    private String told = "";
    private int noticed;
    /** The step a search led to; empty for where the learner was. */
    private String wanted = "";

    private String open = "";

    TerminalFace(LearnerApp bench, SheetWriter writer, Console console) {
        this.bench = bench;
        this.writer = writer;
        this.console = new Pages(console);
    }

    /**
     * Runs until the learner leaves or the input ends.
     *
     * @param bench the course with the learner's work
     * @param writer writes the build sheet
     * @throws IOException where the terminal cannot be opened
     */
    public static void run(LearnerApp bench, SheetWriter writer) throws IOException {
        try (JLineConsole console = JLineConsole.open()) {
            new TerminalFace(bench, writer, console).walk();
        }
    }

    /** Walks from the lesson last open. */
    void walk() {
        View.Course course = bench.course();
        console.say("Your work is kept in " + course.folder());
        tellUnsaved();
        if (!course.unitsSaid()) {
            units();
        }
        console.say("? lists what you can type, ! says what to do in an emergency, q leaves.");
        walkFrom(course.open());
    }

    private void walkFrom(String first) {
        String next = first;
        while (!next.isEmpty()) {
            next = lesson(next);
        }
        saveBeforeLeaving();
        console.say("Until next time.");
    }

    /** Says it where work is not in the folder, once for each reason, and what else happened to the files there. */
    private void tellUnsaved() {
        String now = bench.unsaved().orElse("");
        if (!now.equals(told) && !now.isEmpty()) {
            console.warn(UNSAVED + now);
        }
        told = now;
        List<String> notices = bench.course().notices();
        notices.subList(Math.min(noticed, notices.size()), notices.size()).forEach(console::warn);
        noticed = notices.size();
    }

    private void saveBeforeLeaving() {
        while (bench.unsaved().isPresent()) {
            console.warn(UNSAVED + bench.unsaved().get());
            Optional<String> reply = console.ask("Enter tries to save again, q leaves without: ");
            if (reply.isEmpty() || reply.get().strip().equalsIgnoreCase("q")) {
                return;
            }
            try {
                bench.save();
            } catch (FolderException still) {
                // Said again at the top.
            }
        }
        console.say("All is kept.");
    }

    /** Walks one lesson; the name of the one to go on with, empty to leave. */
    private String lesson(String lessonId) {
        View.Lesson lesson = bench.lesson(lessonId);
        open = lessonId;
        console.say("");
        console.head(lesson.title() + "  (about " + lesson.minutes() + " minutes)");
        int at = start(lesson, wanted.isEmpty() ? lesson.at() : wanted);
        wanted = "";
        while (at < lesson.steps().size()) {
            Move move = step(lesson, lesson.steps().get(at));
            if (move instanceof Move.Leave) {
                return "";
            }
            if (move instanceof Move.To to) {
                wanted = to.stepId();
                return to.lessonId();
            }
            at = move instanceof Move.Back ? Math.max(0, at - 1) : at + 1;
            tellUnsaved();
            // What was answered or run since may have changed what the steps say.
            lesson = bench.lesson(lessonId);
        }
        return afterLast(lesson);
    }

    private String afterLast(View.Lesson lesson) {
        if (lesson.after().isEmpty()) {
            console.say("\nThat was the last lesson.");
            return "";
        }
        console.say("\nThe end of this lesson.");
        return console.ask("Enter goes on to the next one, q leaves: ")
                .filter(reply -> !reply.strip().equalsIgnoreCase("q"))
                .map(reply -> lesson.after())
                .orElse("");
    }

    private static int start(View.Lesson lesson, String stepId) {
        for (int i = 0; i < lesson.steps().size(); i++) {
            if (lesson.steps().get(i).id().equals(stepId)) {
                return i;
            }
        }
        return 0;
    }

    private Move step(View.Lesson lesson, View.Step step) {
        console.say("");
        if (step instanceof View.Snippet snippet) {
            return new SnippetStep(bench, console, lesson.id(), snippet).walk(this::command);
        }
        if (step instanceof View.Question question) {
            return question.form().equals("mend")
                    ? new MendStep(bench, console, lesson.id(), question).walk(this::command)
                    : new QuestionStep(bench, console, lesson.id(), question).walk(this::command);
        }
        if (step instanceof View.Prose prose) {
            console.say(PlainText.of(prose.markdown(), console.width()));
        } else if (step instanceof View.Caution caution) {
            console.warn(
                    PlainText.of((caution.danger() ? "DANGER: " : "CAUTION: ") + caution.markdown(), console.width()));
        } else if (step instanceof View.Drawing drawing) {
            console.say(drawing());
            console.say(PlainText.of(drawing.picture().says(), console.width()));
        }
        return goOn();
    }

    private List<String> drawing() {
        return bench.plainDrawing(console.width(), console.rows());
    }

    private Move goOn() {
        while (true) {
            Optional<String> reply = console.ask("[Enter goes on, ? more] ");
            if (reply.isEmpty()) {
                return new Move.Leave();
            }
            if (reply.get().isBlank()) {
                return new Move.On();
            }
            Optional<Move> move = command(reply.get().strip());
            if (move.isPresent()) {
                return move.get();
            }
        }
    }

    /** Carries out a command that is the same at every prompt; a move where it leads away from the step. */
    private Optional<Move> command(String typed) {
        return switch (typed) {
            case "q" -> Optional.of(new Move.Leave());
            case "b" -> Optional.of(new Move.Back());
            case "w" -> chooseLesson();
            case "d" -> stay(DesignText.lines(bench, drawing(), console.width()));
            case "c" -> {
                clears();
                yield Optional.empty();
            }
            case "p" -> stay(buildSheet());
            case "r" -> refresh();
            case "n" -> {
                new RebuildWalk(bench.rebuild(), console).walk();
                yield Optional.empty();
            }
            case "h" -> {
                new MeasureWalk(bench.survey(), console).walk();
                yield Optional.empty();
            }
            case "g" -> {
                new DesignsWalk(bench.designs(), console).walk();
                yield Optional.empty();
            }
            case "t" -> stay(terms());
            case "f" -> find();
            case "u" -> {
                units();
                yield Optional.empty();
            }
            case "o" -> unanswered();
            case "!" ->
                stay(ConductWords.lines(bench.conduct()).stream()
                        .flatMap(line -> Wrap.lines(line, console.width()).stream())
                        .toList());
            case "?" -> stay(help());
            default -> unknown(typed);
        };
    }

    /** Searches until it is done or the learner stops it; leaving the prompt stops it too. */
    private void clears() {
        View.Clears clears = bench.searchClears();
        while (clears.state() == View.ClearState.SEARCHING) {
            String far = clears.of() == 0 ? "" : ", " + clears.done() + " of " + clears.of();
            Optional<String> typed = console.ask("Searching" + far + ". Enter looks again, s stops: ");
            clears = typed.filter(text -> !text.strip().equals("s")).isPresent() ? bench.clears() : bench.stopClears();
        }
        console.say(ClearsText.lines(clears, console.width()));
        follow(clears);
    }

    /** Takes one of the ways that were found into the design, where the learner wants one. */
    private void follow(View.Clears clears) {
        List<View.Followed> taken = new ArrayList<>();
        while (taken.isEmpty() && clears.dangers().stream().anyMatch(ClearsText::hasWays)) {
            String typed = console.ask("Number to take it into your design, or Enter to leave all as it is: ")
                    .orElse("")
                    .strip();
            if (typed.isEmpty()) {
                return;
            }
            ClearsText.numbered(clears, typed)
                    .ifPresentOrElse(
                            way -> taken.add(bench.follow(way.danger(), way.number())),
                            () -> console.say("“" + typed + "” is no number of these."));
        }
        for (View.Followed followed : taken) {
            console.say(Wrap.lines(followed.words(), console.width()));
            View.Effect whole = bench.effect().withMoved(followed.effect().moved());
            console.say(EffectText.lines(whole, console.width()));
            console.say(Wrap.lines("Type g and then undo to take it back.", console.width()));
        }
    }

    /** Waits until it is worked out or the learner stops it; leaving the prompt stops it too. */
    private List<String> buildSheet() {
        String file = console.ask("File to write, .pdf or .html; Enter for build-sheet.pdf: ")
                .orElse("")
                .strip();
        try {
            return buildSheet(writer.to(file.isEmpty() ? "build-sheet.pdf" : file));
        } catch (RefusedException refused) {
            return refused.lines();
        }
    }

    private List<String> buildSheet(Function<BuildSheet, String> written) {
        View.Building far = bench.startBuild();
        while (far.state() == View.BuildState.WORKING) {
            Optional<String> typed =
                    console.ask(far.words() + " " + far.percent() + " of 100. Enter looks again, s stops: ");
            far = typed.filter(text -> !text.strip().equals("s")).isPresent() ? bench.building() : bench.stopBuild();
        }
        if (far.state() != View.BuildState.DONE) {
            return Wrap.lines(far.words() + " No file was written.", console.width());
        }
        return Wrap.lines(written.apply(bench.build()), console.width());
    }

    /**
     * Asks whose units; Enter leaves them as they are, and that is kept too, so that it is asked once. What is no answer is taken
     * for what the learner was going to type next.
     */
    private void units() {
        String now = bench.units().code();
        Optional<String> typed = console.ask("Units: metric (m, L, °C) or us (ft and in, gal, °F) [" + now + "]: ")
                .map(String::strip);
        String name = typed.filter(text -> !text.isEmpty()).orElse(now);
        Units.named(name).ifPresentOrElse(bench::choose, () -> {
            bench.choose(bench.units());
            console.giveBack(name);
        });
        if (typed.isPresent()) {
            console.say("All is shown in " + bench.units().words() + "; Java stays metric. u changes it.");
        }
    }

    private List<String> terms() {
        String sought = console.ask("Term, or a part of it; Enter for all: ").orElse("");
        return TermsText.lines(bench.words(), sought, console.width());
    }

    private Optional<Move> unanswered() {
        List<View.Question> left = bench.lesson(open).steps().stream()
                .filter(View.Question.class::isInstance)
                .map(View.Question.class::cast)
                .filter(question -> !question.asked().equals("predict"))
                .filter(question ->
                        !question.reply().map(reply -> reply.state().isDone()).orElse(false))
                .toList();
        if (left.isEmpty()) {
            return stay(List.of("Every question of this lesson is answered."));
        }
        for (int i = 0; i < left.size(); i++) {
            console.say("%3d  %s".formatted(i + 1, left.get(i).label()));
        }
        String typed =
                console.ask("Number to go there, or Enter to stay: ").orElse("").strip();
        for (int i = 0; i < left.size(); i++) {
            if (typed.equals(Integer.toString(i + 1))) {
                return Optional.of(new Move.To(open, left.get(i).id()));
            }
        }
        return Optional.empty();
    }

    private Optional<Move> find() {
        String sought = console.ask("Words to find: ").orElse("").strip();
        List<View.Found> found = sought.isEmpty() ? List.of() : bench.search(sought);
        if (found.isEmpty()) {
            return stay(sought.isEmpty() ? List.of() : List.of("Nothing in the course has all of these words."));
        }
        for (int i = 0; i < found.size(); i++) {
            View.Found each = found.get(i);
            String where = each.where().isEmpty() ? "a word" : each.where();
            Wrap.hanging(
                            "%3d  %s (%s): %s".formatted(i + 1, each.head(), where, each.excerpt()),
                            FOUND_TEXT_AT,
                            console.width())
                    .forEach(console::say);
        }
        String typed = console.ask("Number to go to its lesson, or Enter to stay: ")
                .orElse("")
                .strip();
        for (int i = 0; i < found.size(); i++) {
            if (typed.equals(Integer.toString(i + 1)) && !found.get(i).lesson().isEmpty()) {
                return Optional.of(
                        new Move.To(found.get(i).lesson(), found.get(i).step()));
            }
        }
        return Optional.empty();
    }

    private Optional<Move> unknown(String typed) {
        Wrap.lines("“" + typed + "” means nothing at this prompt. What you can type:", console.width())
                .forEach(console::say);
        return stay(help());
    }

    private List<String> help() {
        return Wrap.hangingEach(HELP, HELP_TEXT_AT, console.width());
    }

    private Optional<Move> stay(List<String> lines) {
        console.say(lines);
        return Optional.empty();
    }

    private Optional<Move> refresh() {
        return new RefreshWalk(bench.refresh(), console).walk().map(lessonId -> new Move.To(lessonId));
    }

    /**
     * Walks the refresher, and goes on with a faded lesson where the learner wants to.
     *
     * @param bench the course with the learner's work
     * @param writer writes the build sheet
     * @throws IOException where the terminal cannot be opened
     */
    public static void refresh(LearnerApp bench, SheetWriter writer) throws IOException {
        try (JLineConsole console = JLineConsole.open()) {
            TerminalFace face = new TerminalFace(bench, writer, console);
            face.walkFrom(new RefreshWalk(bench.refresh(), face.console).walk().orElse(""));
        }
    }

    /**
     * Measures the learner's house.
     *
     * @param bench the course with the learner's work
     * @throws IOException where the terminal cannot be opened
     */
    public static void measure(LearnerApp bench) throws IOException {
        try (JLineConsole console = JLineConsole.open()) {
            new MeasureWalk(bench.survey(), new Pages(console)).walk();
        }
    }

    private Optional<Move> chooseLesson() {
        List<View.LessonLine> lessons = bench.course().lessons();
        for (int i = 0; i < lessons.size(); i++) {
            View.LessonLine line = lessons.get(i);
            String found =
                    switch (line.recall()) {
                        case OPEN -> "";
                        case HELD -> "; held";
                        case FADED -> "; faded";
                    };
            console.say("%3d  %s  (%d min; %d of %d questions done%s)"
                    .formatted(i + 1, line.title(), line.minutes(), line.done(), line.of(), found));
        }
        String typed = console.ask("Number of the lesson, or Enter to stay: ")
                .orElse("")
                .strip();
        if (typed.isEmpty()) {
            return Optional.empty();
        }
        for (int i = 0; i < lessons.size(); i++) {
            if (typed.equals(Integer.toString(i + 1))) {
                return Optional.of(new Move.To(lessons.get(i).id()));
            }
        }
        console.say("There is no lesson " + typed + "; the list goes from 1 to " + lessons.size() + ".");
        return Optional.empty();
    }
}
