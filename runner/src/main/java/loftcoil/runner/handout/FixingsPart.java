package loftcoil.runner.handout;

import java.util.List;
import java.util.Optional;
import loftcoil.engine.build.Fixings;
import loftcoil.engine.build.Fixings.CoilRoom;
import loftcoil.engine.build.Fixings.Turn;
import loftcoil.engine.words.Measure;
import loftcoil.runner.show.Html;

/** Clips, growth, bends between legs, and the room of the coil. */
final class FixingsPart {

    /** Angles that differ less than this are one, degrees. */
    private static final double SAME_DEG = 0.5;

    private static final double SQUARE_DEG = 90;
    private static final double HALF_SQUARE_DEG = 45;

    private final MeasureText measures;

    private FixingsPart(MeasureText measures) {
        this.measures = measures;
    }

    static String of(Fixings fixings, MeasureText measures) {
        FixingsPart part = new FixingsPart(measures);
        return Html.section(
                "fixings",
                "Clips, bends and the coil",
                EvenColumns.of(
                                "rules",
                                fixings.rules().stream()
                                        .map(rule -> Prose.inline(measures.words(rule)))
                                        .toList())
                        + part.holds(fixings)
                        + part.turns(fixings)
                        + part.coil(fixings.coil()));
    }

    private String holds(Fixings fixings) {
        List<List<String>> rows = fixings.holds().stream()
                .map(hold -> List.of(
                        Html.element("strong", Html.text(hold.mark())),
                        Html.text(hold.leg()),
                        hold.upright() ? "upright" : "lying or sloping",
                        Integer.toString(hold.clips()),
                        Html.text(measures.of(hold.apart())),
                        Html.text(measures.of(hold.growth()))))
                .toList();
        return Html.table("holds", List.of("mark", "pipe", "how it runs", "clips", "at most apart", "grows by"), rows);
    }

    private String turns(Fixings fixings) {
        if (fixings.turns().isEmpty()) {
            return "";
        }
        List<List<String>> rows = fixings.turns().stream()
                .map(turn -> List.of(
                        Html.element("strong", Html.text(turn.from() + " to " + turn.to())),
                        built(turn),
                        Html.text(measures.of(turn.straightOn())),
                        Html.text(measures.of(turn.aside())),
                        fits(turn, turn.ninetyAt(), SQUARE_DEG),
                        fits(turn, turn.fortyFiveAt(), HALF_SQUARE_DEG)))
                .toList();
        return Html.element("h3", "Bends from leg to leg")
                + Html.table(
                        "turns",
                        List.of(
                                "legs",
                                "as built",
                                "straight on, from above",
                                "square, from above",
                                "90° fits turned by",
                                "45° fits turned by"),
                        rows);
    }

    /** The bend itself where it is known, and which way it turns. */
    private String built(Turn turn) {
        String way = turn.turned()
                .map(Measure::value)
                .map(deg -> Math.abs(deg) < SAME_DEG
                        ? ", straight on"
                        : ", " + Math.round(Math.abs(deg)) + "° to the " + (deg > 0 ? "right" : "left"))
                .orElse("");
        return turn.bend()
                .map(bend ->
                        Html.element("strong", Html.text(measures.of(bend))).strip() + Html.text(way))
                .orElse("not told");
    }

    /** At what turn seen from above a bend fits; where one of the legs stands upright every turn is the same bend. */
    private String fits(Turn turn, Optional<Measure> at, double bendDeg) {
        boolean alike = Math.abs(turn.straightOn().value() - turn.aside().value()) < SAME_DEG;
        if (alike) {
            return Math.abs(turn.straightOn().value() - bendDeg) < SAME_DEG ? "any way" : "no way";
        }
        return at.map(measure -> Html.text(measures.of(measure))).orElse("no way");
    }

    private String coil(CoilRoom room) {
        return Html.element("h3", "Room of the coil")
                + Html.element(
                        "p",
                        Html.element(
                                        "strong",
                                        Html.text(measures.of(room.wideM()) + " wide, " + measures.of(room.deepM())
                                                + " deep, " + measures.of(room.highM()) + " high, tube included."))
                                + " " + Prose.inline(measures.words(room.shape())));
    }
}
