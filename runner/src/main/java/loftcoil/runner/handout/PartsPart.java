package loftcoil.runner.handout;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import loftcoil.engine.build.BuildSheet;
import loftcoil.engine.build.PartsList;
import loftcoil.engine.caution.WorkStep;
import loftcoil.engine.words.Measure;
import loftcoil.engine.words.MeasureKind;
import loftcoil.runner.show.Html;

/** What to buy or find, to be ticked off. */
final class PartsPart {

    private PartsPart() {}

    static String of(BuildSheet sheet, MeasureText measures) {
        String groups = Arrays.stream(PartsList.Group.values())
                .filter(group -> !sheet.parts().of(group).isEmpty())
                .map(group -> Html.element("h3", Html.text(group.label()))
                        + list(sheet.parts().of(group), measures)
                        + (group == PartsList.Group.PIPE ? TubesPart.of(sheet, measures) : ""))
                .collect(Collectors.joining());
        return Html.section(
                "parts", "Parts", new CautionList(measures).beside(WorkStep.PARTS, sheet.cautions()) + groups);
    }

    /** A box to tick, how much, what, and what for; parts that are for the same follow one another and are told so once. */
    private static String list(List<PartsList.Part> parts, MeasureText measures) {
        List<String> items = new ArrayList<>();
        for (int i = 0; i < parts.size(); i++) {
            PartsList.Part part = parts.get(i);
            boolean told = i + 1 < parts.size() && parts.get(i + 1).why().equals(part.why());
            items.add(Html.TICK + " " + Html.element("strong", Html.text(amount(part.amount(), measures))) + " "
                    + Prose.inline(measures.words(part.what()))
                    + (told ? "" : " " + Html.element("span", "note", Prose.inline(measures.words(part.why())))));
        }
        return EvenColumns.of("steps", items);
    }

    /** How much of it; pieces are counted, so that the name of one will do for many. */
    private static String amount(Measure amount, MeasureText measures) {
        return measures.of(amount) + (amount.kind() == MeasureKind.COUNT ? " ×" : "");
    }
}
