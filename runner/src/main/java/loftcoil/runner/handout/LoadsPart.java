package loftcoil.runner.handout;

import java.util.List;
import loftcoil.engine.build.BuildSheet;
import loftcoil.engine.build.Loads;
import loftcoil.engine.caution.WorkStep;
import loftcoil.runner.show.Html;

/** What it weighs. */
final class LoadsPart {

    private LoadsPart() {}

    static String of(BuildSheet sheet, MeasureText measures) {
        Loads loads = sheet.loads();
        List<String> weights = loads.loads().stream()
                .map(load -> Html.element("strong", Html.text(measures.of(load.value()))) + " "
                        + Prose.inline(measures.words(load.what())) + " "
                        + Html.element("span", "note", Prose.inline(measures.words(load.why()))))
                .toList();
        return Html.section(
                "loads",
                "Weights and loads",
                new CautionList(measures).beside(WorkStep.LOADS, sheet.cautions())
                        + Html.two("steps", weights)
                        + Html.two(
                                "rules",
                                loads.notes().stream()
                                        .map(note -> Prose.inline(measures.words(note)))
                                        .toList()));
    }
}
