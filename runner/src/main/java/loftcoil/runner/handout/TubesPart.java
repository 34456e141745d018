package loftcoil.runner.handout;

import java.util.List;
import java.util.stream.Collectors;
import loftcoil.engine.build.BuildSheet;
import loftcoil.engine.build.TubeSize;
import loftcoil.runner.show.Html;

/** The tubes of a design in the sizes that a merchant knows, and what comes near them where another standard is sold. */
final class TubesPart {

    private TubesPart() {}

    static String of(BuildSheet sheet, MeasureText measures) {
        List<TubeSize> tubes = TubeSize.of(sheet);
        if (tubes.isEmpty()) {
            return "";
        }
        List<List<String>> rows =
                tubes.stream().map(tube -> row(tube, measures)).toList();
        return Html.element("h3", "What to ask for at the merchant's")
                + Html.table(
                        "tubes",
                        List.of("on this sheet", "ask for", "outside", "wall", "bore", "nearest elsewhere (its bore)"),
                        rows)
                + Html.element(
                        "p",
                        "small",
                        "The coil of soft tube (EN 1057 R220; ASTM B88 annealed; AS 1432 annealed), the legs of half-hard or hard. Measure what you are handed: outside and wall decide. Another tube is another loop: compute it anew before you buy.");
    }

    private static List<String> row(TubeSize tube, MeasureText measures) {
        String elsewhere = tube.elsewhere().stream()
                .map(near -> Prose.inline(measures.words(near)))
                .collect(Collectors.joining("; "));
        return List.of(
                Html.text(tube.name()),
                Html.element("strong", Html.text(tube.ask())),
                Html.text(measures.of(tube.outside())),
                Html.text(measures.of(tube.wall())),
                Html.text(measures.of(tube.bore())),
                elsewhere.isEmpty() ? "none near" : elsewhere);
    }
}
