package loftcoil.runner.handout;

import java.util.List;
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

/** What the teacher needs beside a question. */
final class KeyPart {

    private static final double PERCENT = 100;

    private final Reckoning reckoning;
    private final Units units;

    KeyPart(Reckoning reckoning, Units units) {
        this.reckoning = reckoning;
        this.units = units;
    }

    String of(Exercise exercise) {
        String source = exercise.about().source();
        return Html.element(
                "div",
                "key",
                answer(exercise)
                        + worked(exercise)
                        + wrongIdeas(exercise)
                        + (source.isEmpty() ? "" : Html.element("p", "source", Html.text("Source: " + source))));
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
                    .map(value -> Html.element("p", bold("Answer: " + value) + within(exercise)))
                    .orElse("");
        } catch (ReckoningException unable) {
            return Html.element("p", Html.text("The value cannot be worked out: " + unable.getMessage()));
        }
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
        return both.isEmpty() ? "" : Html.text("; taken as right within " + both + ".");
    }

    private String worked(Exercise exercise) {
        try {
            String markdown = Worked.markdown(exercise, reckoning);
            return markdown.isBlank() ? "" : Prose.blocks(markdown);
        } catch (ReckoningException unable) {
            return "";
        }
    }

    private String wrongIdeas(Exercise exercise) {
        if (exercise instanceof Choice choice) {
            return table(
                    List.of("wrong choice", "what to say"),
                    choice.options().stream()
                            .filter(option -> !option.right())
                            .map(option -> List.of(Prose.inline(option.text()), Prose.inline(option.say())))
                            .toList());
        }
        if (exercise instanceof Reckoned reckoned) {
            return table(
                    List.of("known wrong idea", "leads to", "what to say"),
                    reckoned.mistakes().stream()
                            .map(mistake ->
                                    mistake(mistake, reckoned.reference().unit()))
                            .toList());
        }
        return exercise instanceof Mend mend
                ? table(List.of("known wrong idea", "changes", "what to say"), MendPart.wrongIdeas(mend, units))
                : "";
    }

    private List<String> mistake(KnownMistake mistake, String unit) {
        return List.of(Html.text(mistake.because()), Html.text(leadsTo(mistake, unit)), Prose.inline(mistake.hint()));
    }

    private String leadsTo(KnownMistake mistake, String unit) {
        try {
            return Worked.shown(reckoning.number(mistake.java()), unit);
        } catch (ReckoningException unable) {
            return "";
        }
    }

    private static String table(List<String> headings, List<List<String>> rows) {
        return rows.isEmpty() ? "" : Html.table("ideas", headings, rows);
    }

    private static String bold(String words) {
        return Html.element("strong", Html.text(words)).strip();
    }
}
