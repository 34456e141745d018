package loftcoil.runner.handout;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import loftcoil.engine.caution.Caution;
import loftcoil.engine.caution.Severity;
import loftcoil.engine.caution.WorkStep;
import loftcoil.engine.words.MeasuredText;
import loftcoil.runner.show.Html;

/** Cautions as boxes, the word for how bad it can get before each. */
final class CautionList {

    private final MeasureText measures;

    CautionList(MeasureText measures) {
        this.measures = measures;
    }

    /** All of them, the most severe first, with their sources. */
    String all(List<Caution> cautions) {
        return Arrays.stream(Severity.values())
                .flatMap(severity -> cautions.stream().filter(caution -> caution.severity() == severity))
                .map(caution -> box(caution, true))
                .collect(Collectors.joining());
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
