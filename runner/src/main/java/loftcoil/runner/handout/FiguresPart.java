package loftcoil.runner.handout;

import java.util.ArrayList;
import java.util.List;
import loftcoil.engine.build.BuildFigure;
import loftcoil.engine.build.BuildSheet;
import loftcoil.engine.words.Measure;
import loftcoil.runner.show.Html;

/** The figures with how far they may be off. Where the doubt comes from stands once below, for many share one. */
final class FiguresPart {

    /** Two figures stand side by side. */
    private static final List<String> HEADINGS =
            List.of("figure", "best", "from to", "doubt", "figure", "best", "from to", "doubt");

    private FiguresPart() {}

    static String of(BuildSheet sheet, MeasureText measures) {
        List<String> doubts = sheet.figures().stream()
                .map(figure -> Prose.inline(measures.words(figure.doubt())))
                .distinct()
                .toList();
        List<List<String>> rows = sheet.figures().stream()
                .map(figure -> row(figure, doubts, measures))
                .toList();
        int half = (rows.size() + 1) / 2;
        List<List<String>> beside = new ArrayList<>();
        for (int i = 0; i < half; i++) {
            List<String> row = new ArrayList<>(rows.get(i));
            row.addAll(half + i < rows.size() ? rows.get(half + i) : List.of("", "", "", ""));
            beside.add(row);
        }
        return Html.section(
                "figures",
                "Figures",
                Html.table("figures", HEADINGS, beside)
                        + Html.element("h3", "Where the doubt comes from")
                        + EvenColumns.numbered("doubts", doubts));
    }

    /** From the one to the other without their unit, which stands beside them. */
    private static String ends(Measure low, Measure high, MeasureText measures) {
        return measures.between(low.withoutUnit(), high.withoutUnit());
    }

    private static List<String> row(BuildFigure figure, List<String> doubts, MeasureText measures) {
        String ends = figure.low()
                .map(low -> Html.element(
                                "span",
                                "range",
                                Html.text(ends(low, figure.high().orElseThrow(), measures)))
                        .strip())
                .orElse("");
        int doubt = doubts.indexOf(Prose.inline(measures.words(figure.doubt())));
        return List.of(
                Html.text(measures.units().said(figure.label())),
                Html.element("strong", Html.text(measures.of(figure.value()))),
                ends,
                Integer.toString(doubt + 1));
    }
}
