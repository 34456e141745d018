package loftcoil.runner.handout;

import java.util.List;
import loftcoil.engine.build.BuildFigure;
import loftcoil.engine.build.BuildSheet;
import loftcoil.runner.show.Html;

/** The figures with how far they may be off. */
final class FiguresPart {

    private FiguresPart() {}

    static String of(BuildSheet sheet, MeasureText measures) {
        List<List<String>> rows =
                sheet.figures().stream().map(figure -> row(figure, measures)).toList();
        return Html.section(
                "figures",
                "Figures",
                Html.table("figures", List.of("figure", "best", "from to", "where the doubt comes from"), rows));
    }

    private static List<String> row(BuildFigure figure, MeasureText measures) {
        String ends = figure.low()
                .map(low -> Html.text(measures.between(low, figure.high().orElseThrow())))
                .orElse("");
        return List.of(
                Html.text(measures.units().said(figure.label())),
                Html.element("strong", Html.text(measures.of(figure.value()))),
                ends,
                Prose.inline(measures.words(figure.doubt())));
    }
}
