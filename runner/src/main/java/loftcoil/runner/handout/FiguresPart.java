package loftcoil.runner.handout;

import java.util.List;
import java.util.stream.Collectors;
import loftcoil.engine.build.BuildFigure;
import loftcoil.engine.build.BuildSheet;
import loftcoil.runner.show.Html;

/** The figures with how far they may be off. Where the doubt comes from stands once below, for many share one. */
final class FiguresPart {

    private FiguresPart() {}

    static String of(BuildSheet sheet, MeasureText measures) {
        List<String> doubts = sheet.figures().stream()
                .map(figure -> Prose.inline(measures.words(figure.doubt())))
                .distinct()
                .toList();
        List<List<String>> rows = sheet.figures().stream()
                .map(figure -> row(figure, doubts, measures))
                .toList();
        return Html.section(
                "figures",
                "Figures",
                Html.table("figures", List.of("figure", "best", "from to", "doubt"), rows)
                        + Html.element("h3", "Where the doubt comes from")
                        + "<ol class=\"doubts\">\n"
                        + doubts.stream()
                                .map(doubt -> Html.element("li", doubt))
                                .collect(Collectors.joining())
                        + "</ol>\n");
    }

    private static List<String> row(BuildFigure figure, List<String> doubts, MeasureText measures) {
        String ends = figure.low()
                .map(low -> Html.text(measures.between(low, figure.high().orElseThrow())))
                .orElse("");
        int doubt = doubts.indexOf(Prose.inline(measures.words(figure.doubt())));
        return List.of(
                Html.text(measures.units().said(figure.label())),
                Html.element("strong", Html.text(measures.of(figure.value()))),
                ends,
                Integer.toString(doubt + 1));
    }
}
