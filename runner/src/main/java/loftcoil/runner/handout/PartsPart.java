package loftcoil.runner.handout;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import loftcoil.engine.build.BuildSheet;
import loftcoil.engine.build.PartsList;
import loftcoil.engine.caution.WorkStep;
import loftcoil.runner.show.Html;

/** What to buy or find, to be ticked off. */
final class PartsPart {

    private PartsPart() {}

    static String of(BuildSheet sheet, MeasureText measures) {
        String groups = Arrays.stream(PartsList.Group.values())
                .filter(group -> !sheet.parts().of(group).isEmpty())
                .map(group -> Html.element("h3", Html.text(group.label()))
                        + table(sheet.parts().of(group), measures))
                .collect(Collectors.joining());
        return Html.section(
                "parts", "Parts", new CautionList(measures).beside(WorkStep.PARTS, sheet.cautions()) + groups);
    }

    private static String table(List<PartsList.Part> parts, MeasureText measures) {
        List<List<String>> rows = parts.stream()
                .map(part -> List.of(
                        Html.TICK,
                        Html.text(measures.of(part.amount())),
                        Prose.inline(measures.words(part.what())),
                        Prose.inline(measures.words(part.why()))))
                .toList();
        return Html.table("parts", List.of("got", "amount", "part", "what for"), rows);
    }
}
