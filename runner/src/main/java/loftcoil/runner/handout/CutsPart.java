package loftcoil.runner.handout;

import java.util.List;
import loftcoil.engine.build.CutList;
import loftcoil.runner.show.Html;

/** Every piece of tube, and how the pieces come out of stock lengths. */
final class CutsPart {

    private CutsPart() {}

    static String of(CutList cuts, MeasureText measures) {
        if (cuts.pieces().isEmpty()) {
            return "";
        }
        List<List<String>> pieces = cuts.pieces().stream()
                .map(piece -> List.of(
                        Html.TICK,
                        Html.element("strong", Html.text(piece.mark())),
                        Html.element("strong", Html.text(measures.of(piece.cutMm()))),
                        Html.text(measures.of(piece.centreMm())),
                        Html.text(measures.of(piece.takeOffMm())),
                        Html.text(piece.tube()),
                        Html.text(piece.leg() + ": ") + Prose.inline(measures.words(piece.between()))))
                .toList();
        List<List<String>> bars = cuts.bars().stream()
                .map(bar -> List.of(
                        Html.text(bar.tube()),
                        Html.text(measures.of(bar.stockM())),
                        Html.text(String.join(", ", bar.marks())),
                        Html.text(measures.of(bar.usedM())),
                        Html.text(measures.of(bar.wasteM()))))
                .toList();
        return Html.section(
                "cuts",
                "Cutting list",
                Html.list(cuts.rules().stream()
                                .map(rule -> Prose.inline(measures.words(rule)))
                                .toList())
                        + Html.table(
                                "cuts",
                                List.of(
                                        "cut",
                                        "mark",
                                        "cut length",
                                        "middle to middle",
                                        "take-off",
                                        "tube",
                                        "where it goes"),
                                pieces)
                        + Html.element("h3", "Out of stock lengths")
                        + Html.table(
                                "bars",
                                List.of("tube", "as sold", "cut from it, in this order", "used", "left over"),
                                bars));
    }
}
