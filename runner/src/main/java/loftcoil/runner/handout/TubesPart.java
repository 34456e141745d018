package loftcoil.runner.handout;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import loftcoil.engine.build.BuildSheet;
import loftcoil.engine.design.Safety;
import loftcoil.engine.design.Vent;
import loftcoil.engine.pipe.Tube;
import loftcoil.engine.pipe.TubeTable;
import loftcoil.engine.pipe.TubeTrade;
import loftcoil.engine.words.Measure;
import loftcoil.runner.show.Html;

/** The tubes of a design in the sizes that a merchant knows, and what comes near them where another standard is sold. */
final class TubesPart {

    private static final double MM_PER_M = 1000;

    private TubesPart() {}

    static String of(BuildSheet sheet, MeasureText measures) {
        Set<String> names = new LinkedHashSet<>();
        sheet.cuts().bars().forEach(bar -> names.add(bar.tube()));
        sheet.design().safety().flatMap(Safety::vent).flatMap(Vent::tube).ifPresent(names::add);
        if (names.isEmpty()) {
            return "";
        }
        List<List<String>> rows = names.stream()
                .map(name -> row(TubeTable.require("tube", name), measures))
                .toList();
        return Html.element("h3", "What to ask for at the merchant's")
                + Html.table(
                        "tubes",
                        List.of("on this sheet", "ask for", "outside", "wall", "bore", "nearest elsewhere (its bore)"),
                        rows)
                + Html.element(
                        "p",
                        "small",
                        "Measure what you are handed: outside and wall decide. Another tube is another loop: compute it anew before you buy.");
    }

    private static List<String> row(Tube tube, MeasureText measures) {
        String elsewhere = TubeTrade.elsewhere(tube).stream()
                .map(other -> TubeTrade.asked(other) + " (" + size(other.boreM(), measures) + ")")
                .collect(Collectors.joining("; "));
        return List.of(
                Html.text(tube.name()),
                Html.element("strong", Html.text(TubeTrade.asked(tube))),
                Html.text(size(tube.outerM(), measures)),
                Html.text(size(tube.wallM(), measures)),
                Html.text(size(tube.boreM(), measures)),
                Html.text(elsewhere.isEmpty() ? "none near" : elsewhere));
    }

    private static String size(double metres, MeasureText measures) {
        return measures.of(Measure.millimetres(metres * MM_PER_M).finer(1));
    }
}
