package loftcoil.runner.handout;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import loftcoil.engine.build.BuildSheet;
import loftcoil.engine.build.Upkeep;
import loftcoil.engine.caution.WorkStep;
import loftcoil.runner.show.Html;

/** What to look after, and when. */
final class UpkeepPart {

    private UpkeepPart() {}

    static String of(BuildSheet sheet, MeasureText measures) {
        String times = Arrays.stream(Upkeep.When.values())
                .filter(when -> !sheet.upkeep().of(when).isEmpty())
                .map(when -> Html.element("h3", Html.text(when.label()))
                        + tasks(sheet.upkeep().of(when), measures))
                .collect(Collectors.joining());
        return Html.section(
                "upkeep", "Upkeep", new CautionList(measures).beside(WorkStep.UPKEEP, sheet.cautions()) + times);
    }

    private static String tasks(List<Upkeep.Task> tasks, MeasureText measures) {
        return EvenColumns.of(
                "steps",
                tasks.stream()
                        .map(task -> Html.TICK + " " + Prose.inline(measures.words(task.what())) + " "
                                + Html.element("span", "note", Prose.inline(measures.words(task.why()))))
                        .toList());
    }
}
