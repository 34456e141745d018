package loftcoil.runner.handout;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import loftcoil.engine.caution.Caution;
import loftcoil.engine.caution.Severity;

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

    /** Those of some codes, where the hand would be hurt; told in full on the first page. */
    String about(List<Caution> cautions, String... codes) {
        return cautions.stream()
                .filter(caution -> Arrays.stream(codes).anyMatch(caution.code()::startsWith))
                .map(caution -> box(caution, false))
                .collect(Collectors.joining());
    }

    private String box(Caution caution, boolean sourced) {
        String source = sourced
                ? " " + Html.element("span", "source", Html.text("Source: " + caution.source() + ". " + caution.code()))
                : "";
        return Html.element(
                "div",
                "warn " + caution.severity().code(),
                Html.element(
                        "p",
                        Html.element("strong", caution.severity().label() + ".") + " "
                                + Html.text(BesideMetric.in(measures.units(), caution.text())) + source));
    }
}
