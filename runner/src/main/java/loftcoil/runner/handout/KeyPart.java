package loftcoil.runner.handout;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleSupplier;
import loftcoil.engine.words.Numeral;
import loftcoil.engine.words.Units;
import loftcoil.runner.check.Worked;
import loftcoil.runner.exercise.Choice;
import loftcoil.runner.exercise.Decision;
import loftcoil.runner.exercise.Exercise;
import loftcoil.runner.exercise.KnownMistake;
import loftcoil.runner.exercise.Mend;
import loftcoil.runner.exercise.Reckoned;
import loftcoil.runner.exercise.Reckoning;
import loftcoil.runner.exercise.ReckoningException;
import loftcoil.runner.exercise.Tolerance;
import loftcoil.runner.show.Html;
import loftcoil.runner.show.Shown;

/** What the teacher needs beside a question. */
final class KeyPart {

    private static final double PERCENT = 100;

    private final Reckoning reckoning;
    private final Units units;

    KeyPart(Reckoning reckoning, Units units) {
        this.reckoning = reckoning;
        this.units = units;
    }

    List<Block> of(Exercise exercise) {
        String source = exercise.about().source();
        List<String> pieces = new ArrayList<>();
        pieces.add(answer(exercise));
        pieces.add(worked(exercise));
        pieces.addAll(wrongIdeas(exercise));
        pieces.add(source.isEmpty() ? "" : Html.element("p", "source", Html.text("Source: " + source)));
        return pieces.stream()
                .filter(piece -> !piece.isBlank())
                .map(piece -> Block.of(piece).within("key"))
                .toList();
    }

    private String answer(Exercise exercise) {
        if (exercise instanceof Choice choice) {
            return choice.options().stream()
                    .filter(Choice.Option::right)
                    .map(right -> Html.element("p", bold("Right:") + " " + Prose.inline(right.text()))
                            + Prose.blocks(right.say()))
                    .findFirst()
                    .orElse("");
        }
        if (exercise instanceof Decision) {
            return Html.element(
                    "p", bold("Nothing is right or wrong here.") + " It goes into the learner’s own design.");
        }
        if (exercise instanceof Mend mend) {
            return MendPart.mended(mend, units);
        }
        try {
            return Worked.answer(exercise, reckoning)
                    .map(value -> Html.element(
                            "p",
                            bold("Answer: " + value + besides(exercise))
                                    + Html.text(byHand(exercise) + within(exercise))))
                    .orElse("");
        } catch (ReckoningException unable) {
            return Html.element("p", Html.text("The value cannot be worked out: " + unable.getMessage()));
        }
    }

    /** What the sum on the page comes to, where the engine counts what that leaves out. */
    private String byHand(Exercise exercise) {
        return Worked.byHand(exercise, reckoning).map(sum -> "; by hand " + sum).orElse("");
    }

    private String besides(Exercise exercise) {
        return exercise instanceof Reckoned reckoned
                ? besides(reckoned, () -> reckoning.number(reckoned.reference().java()))
                : "";
    }

    /** What it is in the units of the class. */
    private String besides(Reckoned reckoned, DoubleSupplier metric) {
        return new Shown(units)
                .besides(reckoned, metric)
                .map(words -> ", which is " + words)
                .orElse("");
    }

    private static String within(Exercise exercise) {
        if (!(exercise instanceof Reckoned reckoned)) {
            return "";
        }
        Tolerance tolerance = reckoned.tolerance();
        String relative = tolerance.relative() > 0 ? Numeral.shown(PERCENT * tolerance.relative(), 3) + " %" : "";
        String absolute = tolerance.absolute() > 0
                ? Worked.shown(tolerance.absolute(), reckoned.reference().unit())
                : "";
        String both = relative.isEmpty() || absolute.isEmpty() ? relative + absolute : relative + " or " + absolute;
        return both.isEmpty() ? "" : "; taken as right within " + both + ".";
    }

    private String worked(Exercise exercise) {
        try {
            String markdown = Worked.markdown(exercise, reckoning);
            return markdown.isBlank() ? "" : Prose.blocks(markdown);
        } catch (ReckoningException unable) {
            return "";
        }
    }

    private List<String> wrongIdeas(Exercise exercise) {
        if (exercise instanceof Choice choice) {
            return choice.options().stream()
                    .filter(option -> !option.right())
                    .map(option -> idea("Wrong: " + Prose.inline(option.text()), "", option.say()))
                    .toList();
        }
        if (exercise instanceof Reckoned reckoned) {
            return reckoned.mistakes().stream()
                    .map(mistake -> idea(
                            "Wrong idea: " + Html.text(mistake.because()),
                            Html.text(leadsTo(mistake, reckoned)),
                            mistake.hint()))
                    .toList();
        }
        return exercise instanceof Mend mend
                ? mend.mistakes().stream()
                        .map(mistake -> idea(
                                "Wrong idea: " + Html.text(mistake.because()),
                                Html.text(MendPart.words(mistake.changes(), units)),
                                mistake.hint()))
                        .toList()
                : List.of();
    }

    /** A wrong idea, what it leads to and what to say, in a few lines. */
    private static String idea(String idea, String leadsTo, String say) {
        return Html.element(
                "p",
                "idea",
                Html.element("em", idea).strip()
                        + (leadsTo.isEmpty() ? "" : " (" + leadsTo + ")")
                        + ". Say: " + Prose.inline(say));
    }

    private String leadsTo(KnownMistake mistake, Reckoned reckoned) {
        try {
            double value = reckoning.number(mistake.java());
            return Worked.shown(value, reckoned.reference().unit()) + besides(reckoned, () -> value);
        } catch (ReckoningException unable) {
            return "";
        }
    }

    private static String bold(String words) {
        return Html.element("strong", Html.text(words)).strip();
    }
}
