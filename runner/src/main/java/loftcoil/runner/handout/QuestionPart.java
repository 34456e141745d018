package loftcoil.runner.handout;

import java.util.List;
import java.util.stream.Collectors;
import loftcoil.engine.words.Units;
import loftcoil.runner.exercise.Choice;
import loftcoil.runner.exercise.Code;
import loftcoil.runner.exercise.Decision;
import loftcoil.runner.exercise.Exercise;
import loftcoil.runner.exercise.Mend;
import loftcoil.runner.exercise.Quantity;
import loftcoil.runner.lesson.Step;
import loftcoil.runner.show.Html;
import loftcoil.runner.show.Shown;

/** A question on paper, with room to answer it. */
final class QuestionPart {

    private static final String RULE = "<div class=\"rule\">\u00a0</div>\n";
    private static final int LINES_FOR_WORKING = 2;
    private static final int LINES_FOR_JAVA = 5;

    private final Shown shown;

    QuestionPart(Units units) {
        this.shown = new Shown(units);
    }

    /** The question alone; what a choice offers stands below it in the key, right and wrong. */
    String asked(int number, Step.Question question, Exercise exercise) {
        String body = exercise instanceof Choice ? Prose.blocks(exercise.text()) : body(exercise);
        return Html.element("div", "question", heading(number, question) + body);
    }

    /** The question with boxes to tick or lines to write on. */
    String toAnswer(int number, Step.Question question, Exercise exercise) {
        return Html.element("div", "question", heading(number, question) + body(exercise) + room(exercise));
    }

    private static String heading(int number, Step.Question question) {
        String kind =
                switch (question.asked()) {
                    case PREDICT -> "Guess before you go on";
                    case QUESTION -> "Question";
                    case DECIDE -> "Decide for your own design";
                    case AGAIN -> "From an earlier lesson";
                };
        return Html.element("h3", Html.text(number + ". " + kind + ": " + question.label()));
    }

    private String body(Exercise exercise) {
        if (exercise instanceof Code code && !code.lines().isEmpty()) {
            return Prose.blocks(exercise.text()) + lines(code);
        }
        String starter = exercise instanceof Code code && !code.starter().isBlank()
                ? Html.element("pre", Html.text(code.starter()))
                : "";
        String system = exercise instanceof Mend mend ? MendPart.system(mend, shown.units()) : "";
        return Prose.blocks(exercise.text()) + starter + system + options(exercise);
    }

    /** With a pen a line is chosen, not written. */
    private static String lines(Code code) {
        StringBuilder all = new StringBuilder();
        for (List<String> line : code.lines()) {
            all.append(
                    line.size() == 1
                            ? Html.element("pre", Html.text(line.get(0)))
                            : Html.element(
                                    "ul",
                                    "steps",
                                    line.stream()
                                            .map(java -> Html.element(
                                                    "li",
                                                    Html.TICK + " " + Html.element("code", Html.text(java.strip()))))
                                            .collect(Collectors.joining())));
        }
        return all.toString();
    }

    private String options(Exercise exercise) {
        List<String> options = exercise instanceof Choice choice
                ? choice.options().stream().map(Choice.Option::text).toList()
                : exercise instanceof Decision decision ? shown.options(decision.options()) : List.of();
        return options.isEmpty()
                ? ""
                : Html.element(
                        "ul",
                        "steps",
                        options.stream()
                                .map(option -> Html.element("li", Html.TICK + " " + Prose.inline(option)))
                                .collect(Collectors.joining()));
    }

    private String room(Exercise exercise) {
        if (exercise instanceof Choice) {
            return Html.element("p", "small", "Why?") + RULE;
        }
        if (exercise instanceof Decision decision) {
            return answer("Decided: ", shown.unit(decision.change(), decision.unit()))
                    + Html.element("p", "small", "Because:")
                    + RULE;
        }
        if (exercise instanceof Code code && !code.lines().isEmpty()) {
            return answer("It comes to: ", code.reference().unit());
        }
        if (exercise instanceof Quantity quantity) {
            return RULE.repeat(LINES_FOR_WORKING)
                    + answer("Answer: ", quantity.reference().unit());
        }
        if (exercise instanceof Mend) {
            return Html.element("p", "small", "The cause, and how it could be told by hand and thermometer:")
                    + RULE.repeat(LINES_FOR_WORKING);
        }
        return RULE.repeat(LINES_FOR_JAVA);
    }

    private static String answer(String word, String unit) {
        return "<p class=\"answer\">" + word + "<span class=\"line\">\u00a0</span> " + Html.text(unit) + "</p>\n";
    }
}
