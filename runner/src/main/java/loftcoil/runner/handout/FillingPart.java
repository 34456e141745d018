package loftcoil.runner.handout;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import loftcoil.engine.build.BuildSheet;
import loftcoil.engine.build.Filling;
import loftcoil.engine.caution.WorkStep;
import loftcoil.runner.show.Html;

/** Filling, leak test and first fire, step by step with a box to tick, cautions in their place. */
final class FillingPart {

    private FillingPart() {}

    static String of(BuildSheet sheet, MeasureText measures) {
        String stages = Arrays.stream(Filling.Stage.values())
                .map(stage -> stage(sheet.filling(), stage, measures))
                .collect(Collectors.joining());
        return Html.section(
                "filling",
                "Filling and first fire",
                new CautionList(measures).beside(WorkStep.FILLING, sheet.cautions()) + stages);
    }

    private static String stage(Filling filling, Filling.Stage stage, MeasureText measures) {
        List<Filling.Step> steps =
                filling.steps().stream().filter(step -> step.stage() == stage).toList();
        if (steps.isEmpty()) {
            return "";
        }
        return Html.element("h3", Html.text(stage.label()))
                + Html.element(
                        "ul",
                        "steps",
                        steps.stream().map(step -> step(step, measures)).collect(Collectors.joining()));
    }

    private static String step(Filling.Step step, MeasureText measures) {
        String caution = step.caution()
                .map(words -> Html.element(
                        "div",
                        "warn warning",
                        Html.element(
                                "p", Html.element("strong", "Caution.") + " " + Prose.inline(measures.words(words)))))
                .orElse("");
        // The caution is read before the hand moves.
        return Html.element(
                "li", caution + Html.element("p", Html.TICK + " " + Prose.inline(measures.words(step.what()))));
    }
}
