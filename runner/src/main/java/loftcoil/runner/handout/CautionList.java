package loftcoil.runner.handout;

import java.util.List;
import java.util.stream.Collectors;
import loftcoil.engine.caution.Caution;
import loftcoil.engine.caution.WorkStep;
import loftcoil.engine.sheet.SafetyVerdict;
import loftcoil.engine.words.MeasuredText;
import loftcoil.runner.show.Html;

/** Cautions as boxes, the word for how bad it can get before each. */
final class CautionList {

    private final MeasureText measures;

    CautionList(MeasureText measures) {
        this.measures = measures;
    }

    /** All of them, the gravest leading, with their sources. */
    String all(SafetyVerdict verdict) {
        String more = verdict.followingWords();
        return boxes(verdict.leading())
                + (more.isEmpty() ? "" : Html.element("h3", Html.text(more)))
                + boxes(verdict.following());
    }

    private String boxes(List<Caution> cautions) {
        return cautions.stream().map(caution -> box(caution, true)).collect(Collectors.joining());
    }

    /** Those that stand beside a step of the work, where the hand would be hurt; told in full on the first page. */
    String beside(WorkStep step, List<Caution> cautions) {
        return cautions.stream()
                .filter(caution -> caution.kind().beside().contains(step))
                .map(caution -> box(caution, false))
                .collect(Collectors.joining());
    }

    private String box(Caution caution, boolean sourced) {
        String source = sourced
                ? " "
                        + Html.element(
                                "span",
                                "source",
                                "Source: " + inline(caution.kind().source()) + ". " + Html.text(caution.code()))
                : "";
        return Html.element(
                "div",
                "warn " + caution.severity().code(),
                Html.element(
                        "p",
                        Html.element("strong", caution.severity().label() + ".") + " " + inline(caution.words())
                                + source));
    }

    private String inline(MeasuredText words) {
        return Prose.inline(measures.words(words));
    }
}
