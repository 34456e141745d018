package loftcoil.runner.handout;

import java.util.ArrayList;
import java.util.List;
import loftcoil.engine.build.CutList;
import loftcoil.engine.build.CutList.Piece;
import loftcoil.runner.show.Html;

/** Every piece of tube, and how the pieces come out of stock lengths. */
final class CutsPart {

    private CutsPart() {}

    static String of(CutList cuts, MeasureText measures) {
        if (cuts.pieces().isEmpty()) {
            return "";
        }
        List<List<String>> pieces =
                alike(cuts).stream().map(group -> row(group, measures)).toList();
        List<String> bars = cuts.bars().stream()
                .map(bar -> Html.TICK + " " + Html.text(measures.of(bar.stockM()) + " of " + bar.tube()) + ": "
                        + Html.element("strong", Html.text(String.join(", ", bar.marks())))
                                .strip()
                        + Html.text("; rest " + measures.of(bar.wasteM())))
                .toList();
        return Html.section(
                "cuts",
                "Cutting list",
                EvenColumns.of(
                                "rules",
                                cuts.rules().stream()
                                        .map(rule -> Prose.inline(measures.words(rule)))
                                        .toList())
                        + Html.table(
                                "cuts",
                                List.of(
                                        "cut",
                                        "mark",
                                        "pieces",
                                        "cut length",
                                        "middle to middle",
                                        "take-off",
                                        "tube",
                                        "from what to what"),
                                pieces)
                        + Html.element("h3", "Out of lengths as sold, cut in this order")
                        + EvenColumns.of("steps", bars));
    }

    /** Pieces that follow one another and are cut alike, together: a long pipe has many. */
    private static List<List<Piece>> alike(CutList cuts) {
        List<List<Piece>> groups = new ArrayList<>();
        for (Piece piece : cuts.pieces()) {
            List<Piece> last = groups.isEmpty() ? List.of() : groups.get(groups.size() - 1);
            if (!last.isEmpty() && sameCut(last.get(0), piece)) {
                last.add(piece);
            } else {
                groups.add(new ArrayList<>(List.of(piece)));
            }
        }
        return groups;
    }

    private static boolean sameCut(Piece one, Piece other) {
        return one.leg().equals(other.leg())
                && one.tube().equals(other.tube())
                && one.cutMm().equals(other.cutMm())
                && one.centreMm().equals(other.centreMm())
                && one.between().equals(other.between());
    }

    private static List<String> row(List<Piece> group, MeasureText measures) {
        Piece piece = group.get(0);
        String last =
                group.size() == 1 ? "" : " to " + group.get(group.size() - 1).mark();
        return List.of(
                Html.TICK.repeat(group.size()),
                Html.element("strong", Html.text(piece.mark() + last)),
                Integer.toString(group.size()),
                Html.element("strong", Html.text(measures.of(piece.cutMm()))),
                Html.text(measures.of(piece.centreMm())),
                Html.text(measures.of(piece.takeOffMm())),
                Html.text(piece.tube()),
                Prose.inline(measures.words(piece.between())));
    }
}
