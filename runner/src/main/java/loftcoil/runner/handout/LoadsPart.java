package loftcoil.runner.handout;

import java.util.ArrayList;
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
        List<String> weights = weights(loads.loads(), measures);
        return Html.section(
                "loads",
                "Weights and loads",
                new CautionList(measures).beside(WorkStep.LOADS, sheet.cautions())
                        + EvenColumns.of("steps", weights)
                        + EvenColumns.of(
                                "rules",
                                loads.notes().stream()
                                        .map(note -> Prose.inline(measures.words(note)))
                                        .toList()));
    }

    /** Loads that follow one another and are so for the same reason are told why once, behind the last. */
    private static List<String> weights(List<Loads.Load> loads, MeasureText measures) {
        List<String> weights = new ArrayList<>();
        for (int i = 0; i < loads.size(); i++) {
            Loads.Load load = loads.get(i);
            boolean told = i + 1 < loads.size() && loads.get(i + 1).why().equals(load.why());
            weights.add(Html.element("strong", Html.text(measures.of(load.value()))) + " "
                    + Prose.inline(measures.words(load.what()))
                    + (told ? "" : " " + Html.element("span", "note", Prose.inline(measures.words(load.why())))));
        }
        return weights;
    }
}
