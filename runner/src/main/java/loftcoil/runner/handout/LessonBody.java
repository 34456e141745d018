package loftcoil.runner.handout;

import java.util.ArrayList;
import java.util.List;
import loftcoil.engine.design.Example;
import loftcoil.runner.course.Course;
import loftcoil.runner.exercise.Exercise;
import loftcoil.runner.exercise.Reckoning;
import loftcoil.runner.exercise.Variation;
import loftcoil.runner.lesson.Lesson;
import loftcoil.runner.lesson.Step;
import loftcoil.runner.show.Html;

/** The steps of a lesson on paper, in reading order. */
final class LessonBody {

    private final Course course;
    private final LessonRuns runs;
    private final LessonSetting setting;
    private final QuestionPart questions;
    private final KeyPart key;
    private boolean guessed;
    private int number;

    LessonBody(Course course, LessonRuns runs, Reckoning reckoning, LessonSetting setting) {
        this.course = course;
        this.runs = runs;
        this.setting = setting;
        this.questions = new QuestionPart(setting.units());
        this.key = new KeyPart(reckoning, setting.units());
    }

    /** What stands above all: whose sheet it is, and the title of the lesson. */
    String top(Lesson lesson) {
        return header(lesson) + title(lesson);
    }

    /** All the rest in reading order. */
    List<Block> blocks(Lesson lesson) {
        List<Block> blocks = new ArrayList<>();
        lesson.steps().forEach(step -> blocks.addAll(step(lesson, step)));
        return blocks;
    }

    private static String title(Lesson lesson) {
        return Html.element("h1", Html.text(lesson.title()));
    }

    private String header(Lesson lesson) {
        String kicker = setting.key() ? "Teacher’s key" : "Handout";
        String names = setting.key()
                ? Html.element(
                        "p",
                        "small",
                        "With answers, worked solutions, and for each known wrong idea what to say. The numbers are those of class"
                                + " seed " + setting.seed() + ": hand out the sheets of the same seed.")
                : "<p class=\"names\">Name <span class=\"line\">\u00a0</span> Date <span class=\"line short\">\u00a0</span></p>\n";
        return Html.element(
                "header", Html.element("p", "kicker", kicker + ", about " + lesson.minutes() + " minutes") + names);
    }

    private List<Block> step(Lesson lesson, Step step) {
        if (step instanceof Step.Prose prose) {
            return Block.prose(prose.markdown()).stream()
                    .filter(block -> !block.html().startsWith("<h1"))
                    .toList();
        }
        if (step instanceof Step.Caution caution) {
            return List.of(Block.of(caution(caution)));
        }
        if (step instanceof Step.Drawing drawing) {
            return List.of(Block.of(drawing(drawing)));
        }
        if (step instanceof Step.Snippet snippet) {
            boolean blank = guessed && !setting.key();
            guessed = false;
            return SnippetPart.of(snippet, runs, blank, setting.units());
        }
        return question(lesson, (Step.Question) step);
    }

    private List<Block> question(Lesson lesson, Step.Question question) {
        guessed |= question.asked() == Step.Asked.PREDICT;
        Exercise asked = course.exercise(question.exercise());
        Exercise exercise = question.asked() == Step.Asked.AGAIN
                ? Variation.again(asked, setting.seed(), lesson.id())
                : Variation.own(asked, setting.seed());
        number++;
        if (!setting.key()) {
            return List.of(Block.of(questions.toAnswer(number, question, exercise)));
        }
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block(questions.asked(number, question, exercise), true));
        blocks.addAll(key.of(exercise));
        return blocks;
    }

    private static String caution(Step.Caution caution) {
        String word = Html.element("strong", caution.danger() ? "Danger." : "Caution.")
                .strip();
        String inside = Prose.blocks(caution.markdown()).strip().replaceFirst("^<p>", "<p>" + word + " ");
        return Html.element("div", "warn " + (caution.danger() ? "danger" : "warning"), inside);
    }

    private String drawing(Step.Drawing step) {
        return LoopPicture.of(
                Example.orchardBothy(),
                step.caption() + ": the orchard bothy, an invented example that every design starts from.",
                setting.units());
    }
}
