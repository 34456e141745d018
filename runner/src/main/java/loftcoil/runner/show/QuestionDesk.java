package loftcoil.runner.show;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loftcoil.engine.design.Change;
import loftcoil.engine.design.Changes;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.DesignJson;
import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.sheet.SafetyVerdict;
import loftcoil.engine.study.Comparison;
import loftcoil.engine.survey.FaultWords;
import loftcoil.engine.words.Units;
import loftcoil.runner.check.Checker;
import loftcoil.runner.check.Verdict;
import loftcoil.runner.course.Course;
import loftcoil.runner.exercise.Choice;
import loftcoil.runner.exercise.Code;
import loftcoil.runner.exercise.Decision;
import loftcoil.runner.exercise.Exercise;
import loftcoil.runner.exercise.Quantity;
import loftcoil.runner.exercise.Reckoning;
import loftcoil.runner.exercise.ReckoningException;
import loftcoil.runner.exercise.Variation;
import loftcoil.runner.lesson.Lesson;
import loftcoil.runner.lesson.Step;
import loftcoil.runner.progress.AnswerState;
import loftcoil.runner.progress.Progress;
import loftcoil.runner.progress.Trail;

/** Shows questions with the learner's own numbers, and takes answers and decisions. */
final class QuestionDesk {

    /** States that are looked back to for one from before a decision that is made anew. */
    private static final int MOST_TRIED = 12;

    private static final String REFUSED = "Your design cannot take that.";

    private final Course course;
    private final LearnerStore store;
    private final Reckoning reckoning;
    private final ReplyWords replies;
    private List<Guess> lastCompared = List.of();

    private record Guess(Step.Question question, String text) {}

    QuestionDesk(Course course, LearnerStore store, Reckoning reckoning) {
        this.course = course;
        this.store = store;
        this.reckoning = reckoning;
        this.replies = new ReplyWords(reckoning, store::units);
    }

    private Exercise own(Lesson lesson, Step.Question question) {
        Exercise exercise = course.exercise(question.exercise());
        long seed = store.progress().seed();
        return question.asked() == Step.Asked.AGAIN
                ? Variation.again(exercise, seed, lesson.id())
                : Variation.own(exercise, seed);
    }

    View.Question view(Lesson lesson, Step.Question question) {
        Exercise exercise = own(lesson, question);
        List<Progress.Given> answers = store.work(lesson.id()).answersTo(question.id());
        return new View.Question(
                question.id(),
                switch (question.asked()) {
                    case PREDICT -> "predict";
                    case QUESTION -> "question";
                    case DECIDE -> "decide";
                    case AGAIN -> "again";
                },
                exercise.form(),
                question.label(),
                exercise.text(),
                unit(exercise),
                options(exercise),
                exercise instanceof Code code ? code.starter() : "",
                current(exercise),
                before(exercise, answers),
                exercise instanceof Code code ? code.lines() : List.of());
    }

    /** The text of a question, with the learner's own numbers. */
    String text(Lesson lesson, Step.Question question) {
        return own(lesson, question).text();
    }

    private Shown shown() {
        return new Shown(store.units());
    }

    private String unit(Exercise exercise) {
        if (exercise instanceof Quantity quantity) {
            return quantity.reference().unit();
        }
        return exercise instanceof Decision decision ? shown().unit(decision.change(), decision.unit()) : "";
    }

    private List<String> options(Exercise exercise) {
        if (exercise instanceof Choice choice) {
            return choice.options().stream().map(Choice.Option::text).toList();
        }
        return exercise instanceof Decision decision ? shown().options(decision.options()) : List.of();
    }

    private String current(Exercise exercise) {
        if (!(exercise instanceof Decision decision)) {
            return "";
        }
        String value = Changes.current(store.design(), decision.change());
        return value.equals(Changes.NOT_SAID) ? value : shown().value(decision.change(), value, decision.unit());
    }

    View.Reply answer(Lesson lesson, Step.Question question, String text) {
        try {
            return checked(lesson, question, text);
        } catch (ReckoningException unable) {
            // The answer may well be right: it is told as our own trouble and never counted as a try.
            String words = "Loftcoil cannot work out this question's own value, so your answer is not judged: "
                    + unable.getMessage();
            return new View.Reply(text, AnswerState.UNREAD, words, "", View.Counted.NONE, "", "");
        }
    }

    private View.Reply checked(Lesson lesson, Step.Question question, String typed) {
        Exercise exercise = own(lesson, question);
        String text = exercise instanceof Decision decision ? decided(decision, typed) : typed;
        Verdict verdict = Checker.check(exercise, text, reckoning);
        if (verdict instanceof Verdict.Decided decided && exercise instanceof Decision decision) {
            return decide(lesson, question, decision, decided, text);
        }
        List<Progress.Given> answers = keep(lesson, question, replies.given(exercise, verdict, text));
        return replies.now(exercise, verdict, answers);
    }

    /** A decision as typed, a number with the unit it is in. */
    private String decided(Decision decision, String typed) {
        return decision.options().isEmpty()
                ? shown().withUnit(decision.change(), typed, decision.unit())
                : shown().chosen(decision.options(), typed);
    }

    private View.Reply decide(
            Lesson lesson, Step.Question question, Decision decision, Verdict.Decided decided, String text) {
        Design before = store.design();
        try {
            Design changed = Changes.apply(undecided(decision.change()), decision.change(), decided.value());
            store.becomes(changed, Trail.How.DECIDED);
        } catch (RefusedException refused) {
            String faults = "- " + String.join("\n- ", FaultWords.lines(shown().said(refused)));
            keep(lesson, question, new Progress.Given(text, AnswerState.UNREAD, "", REFUSED, faults));
            return new View.Reply(text, AnswerState.UNREAD, REFUSED, faults, View.Counted.NONE, "", "");
        }
        Change change = Changes.describe(decision.change());
        SafetyVerdict verdict = SafetyVerdict.quick(store.design());
        View.Effect effect = EffectWords.of(
                store.trail().number(),
                Comparison.of(before, store.design()),
                decision.change(),
                verdict.open(),
                store.units());
        String words = change.label() + ": " + taken(decision, decided) + ". It is in your design now."
                + (effect.danger().isEmpty() ? "" : " " + effect.danger())
                + store.toldOtherwise(List.of(decision.change()));
        String hint = decision.about().solution().text();
        keep(lesson, question, new Progress.Given(text, AnswerState.DECIDED, "", words, hint));
        return new View.Reply(
                text,
                AnswerState.DECIDED,
                words,
                hint,
                View.Counted.NONE,
                "",
                decision.about().source(),
                Optional.of(stands(decision, verdict, Optional.of(effect))));
    }

    /**
     * The design from before this was decided, where nothing else has been decided since: one value tried after another must not leave in
     * the pipes what led to the first. Else the design as it is.
     */
    private Design undecided(String change) {
        Design now = store.design();
        String value = Changes.current(now, change);
        List<Trail.Entry> entries = store.trail().entries();
        int first = entries.size() - 1;
        while (first > 0
                && entries.size() - first < MOST_TRIED
                && entries.get(first).how() == Trail.How.DECIDED) {
            first--;
        }
        return entries.subList(first, entries.size() - 1).stream()
                .flatMap(entry -> leadingTo(entry.state(), change, value, now).stream())
                .findFirst()
                .orElse(now);
    }

    /** An earlier state, where this one change of it makes the design as it is now. */
    private static Optional<Design> leadingTo(String state, String change, String value, Design now) {
        try {
            return Optional.of(DesignJson.read(state))
                    .filter(earlier -> Changes.apply(earlier, change, value).equals(now));
        } catch (RefusedException ofAnotherEdition) {
            return Optional.empty();
        }
    }

    private View.Stands stands(Decision decision, SafetyVerdict verdict, Optional<View.Effect> effect) {
        return new View.Stands(current(decision), SafetyWords.of(verdict, store.design(), store.units()), effect);
    }

    private String taken(Decision decision, Verdict.Decided decided) {
        return store.units() == Units.METRIC
                ? decided.taken().words()
                : shown().value(decision.change(), decided.value(), decision.unit());
    }

    /** A decision is shown again with what its design comes to now. */
    private Optional<View.Reply> before(Exercise exercise, List<Progress.Given> answers) {
        Optional<View.Reply> reply = replies.before(exercise, answers);
        boolean decided =
                reply.filter(said -> said.state() == AnswerState.DECIDED).isPresent();
        if (!decided || !(exercise instanceof Decision decision)) {
            return reply;
        }
        return reply.map(said -> new View.Reply(
                said.answer(),
                said.state(),
                said.words(),
                said.hintMarkdown(),
                said.tries(),
                said.workedMarkdown(),
                decision.about().source(),
                Optional.of(stands(decision, SafetyVerdict.quick(store.design()), Optional.empty()))));
    }

    private List<Progress.Given> keep(Lesson lesson, Step.Question question, Progress.Given given) {
        store.updateWork(
                lesson.id(), work -> work.withAnswer(question.id(), given).withStep(question.id()));
        return store.work(lesson.id()).answersTo(question.id());
    }

    /**
     * What the learner guessed since the snippet before this one, beside what it came to.
     *
     * @param again true to say it even where the same guesses were compared before
     */
    synchronized List<String> predictions(Lesson lesson, Step.Snippet snippet, boolean again) {
        List<Guess> guesses = guesses(lesson, snippet);
        if (guesses.equals(lastCompared) && !again) {
            return List.of();
        }
        lastCompared = guesses;
        return guesses.stream()
                .map(guess -> beside(own(lesson, guess.question()), guess.text()))
                .toList();
    }

    private List<Guess> guesses(Lesson lesson, Step.Snippet snippet) {
        List<Guess> guesses = new ArrayList<>();
        for (Step step : lesson.before(snippet.id())) {
            if (step instanceof Step.Snippet) {
                guesses.clear();
            } else if (step instanceof Step.Question question && question.asked() == Step.Asked.PREDICT) {
                lastGuess(lesson, question).ifPresent(guesses::add);
            }
        }
        return guesses;
    }

    private Optional<Guess> lastGuess(Lesson lesson, Step.Question question) {
        return store.work(lesson.id()).answersTo(question.id()).stream()
                .filter(given -> given.state() == AnswerState.NOTED)
                .reduce((first, second) -> second)
                .map(given -> new Guess(question, given.text()));
    }

    /** As it was noted, with its unit; a guess whose unit is in doubt is taken so too. */
    private String noted(Exercise exercise, String guess) {
        return Checker.check(exercise, guess, reckoning) instanceof Verdict.Noted noted
                ? noted.taken().words()
                : guess;
    }

    private String beside(Exercise exercise, String guess) {
        Verdict verdict = Checker.compare(exercise, guess, reckoning);
        String judged = verdict instanceof Verdict.Right ? "Close: you" : "You";
        if (exercise instanceof Choice choice) {
            return choice.options().stream()
                    .filter(Choice.Option::right)
                    .findFirst()
                    .map(right ->
                            (verdict instanceof Verdict.Right ? "As you guessed: " : "You guessed otherwise; it is: ")
                                    + right.text())
                    .orElse("");
        }
        String taken = verdict instanceof Verdict.Right right
                ? right.taken().words()
                : verdict instanceof Verdict.Wrong wrong ? wrong.taken().words() : noted(exercise, guess);
        return judged + " guessed " + taken + "; it comes to "
                + replies.comesTo(exercise).orElse("what the snippet shows") + ".";
    }
}
