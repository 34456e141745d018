package loftcoil.runner.handout;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import loftcoil.engine.build.BuildSheet;
import loftcoil.engine.caution.Conduct;
import loftcoil.engine.sheet.FirstCharge;
import loftcoil.engine.words.Measure;
import loftcoil.engine.words.MeasureKind;
import loftcoil.engine.words.MeasuredText;
import loftcoil.runner.show.ConductWords;
import loftcoil.runner.show.Html;

/** The table of conduct, on a page of its own that can hang beside the heater. */
final class ConductPart {

    /** What whoever is called has to be told, to be filled in with a pen beforehand. */
    private static final List<String> TO_FILL_IN =
            List.of("Number to call", "Where we are, for whoever comes", "Where we meet outdoors");

    private final MeasureText measures;

    private ConductPart(MeasureText measures) {
        this.measures = measures;
    }

    static String of(BuildSheet sheet, MeasureText measures) {
        ConductPart part = new ConductPart(measures);
        String rules = Stream.of(Conduct.values()).map(part::rule).collect(Collectors.joining());
        String lines = TO_FILL_IN.stream()
                .map(words ->
                        Html.element("p", "names", Html.text(words) + ": " + Html.element("span", "line", "\u00a0")))
                .collect(Collectors.joining());
        return Html.section(
                "conduct",
                ConductWords.TITLE,
                Html.element("dl", rules)
                        + part.charge(FirstCharge.of(sheet.design()))
                        + lines
                        + Html.element("p", "small", part.inline(Conduct.worth())));
    }

    private String rule(Conduct rule) {
        return Html.element("dt", inline(rule.when())) + Html.element("dd", inline(rule.act()));
    }

    private String charge(FirstCharge charge) {
        String weight = measures.of(new Measure(charge.weighedG(), MeasureKind.SMALL_MASS_G));
        return Html.element(
                "p",
                "Weighed charge of this design: "
                        + Html.element("strong", Html.text(weight)).strip());
    }

    private String inline(MeasuredText words) {
        return Prose.inline(measures.words(words));
    }
}
