package loftcoil.runner.handout;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import loftcoil.engine.build.BuildSheet;
import loftcoil.engine.build.FirstHour;
import loftcoil.engine.build.FirstHour.State;
import loftcoil.engine.words.Measure;
import loftcoil.engine.words.MeasureKind;
import loftcoil.engine.words.MeasuredText;
import loftcoil.runner.show.Html;

/** What thermometer and hand should tell in the first hour, and what it means when they do not. */
final class FirstHourPart {

    private static final List<Function<State, Measure>> PLACES = List.of(
            State::coilOutC,
            State::riserTopC,
            State::coldLegC,
            State::tankTopC,
            State::tankMiddleC,
            State::tankBottomC,
            State::flowLPerMin);
    private static final List<String> NAMES =
            List.of("coil outlet", "return port", "coil inlet", "tank top", "tank middle", "tank bottom", "flow");

    private final MeasureText measures;

    private FirstHourPart(MeasureText measures) {
        this.measures = measures;
    }

    static String of(BuildSheet sheet, MeasureText measures) {
        String inside = sheet.firstHour()
                .map(hour -> new FirstHourPart(measures).inside(hour))
                .orElseGet(() -> Html.element(
                        "p",
                        "There is no table of the first hour, because this loop must not be fired as it is drawn: see the first"
                                + " page."));
        return Html.section("first-hour", "The first hour", inside);
    }

    private String inside(FirstHour hour) {
        List<String> signs = hour.signs().stream()
                .map(sign -> Html.TICK + " " + Html.element("strong", inline(sign.where())) + " " + inline(sign.what()))
                .toList();
        List<List<String>> wrong = hour.wrongPictures().stream()
                .map(picture -> List.of(inline(picture.seen()), inline(picture.means()), inline(picture.act())))
                .toList();
        return Html.list(hour.notes().stream().map(this::inline).toList())
                + brackets(hour)
                + Html.table(
                        "hour", headings(), hour.rows().stream().map(this::row).toList())
                + Html.element("h3", "What the hand and the thermometer tell")
                + EvenColumns.of("steps", signs)
                + Html.element("h3", "If it is not so")
                + Html.tall("wrong", List.of("what you find", "what it most likely means", "what to do"), wrong);
    }

    private static String brackets(FirstHour hour) {
        boolean any = hour.rows().stream().anyMatch(row -> !row.low().equals(row.high()));
        return any
                ? Html.element("p", "small", "In brackets: with the least and with the most heat the fire may give.")
                : "";
    }

    private List<String> headings() {
        List<String> headings = new ArrayList<>(List.of(heading("after", MeasureKind.TIME_MIN)));
        for (String name : NAMES) {
            headings.add(heading(name, name.equals("flow") ? MeasureKind.FLOW_L_PER_MIN : MeasureKind.TEMP_C));
        }
        return headings;
    }

    private String heading(String name, MeasureKind kind) {
        return Html.text(name) + " "
                + Html.element("span", "unit", Html.text(measures.unit(kind))).strip();
    }

    private List<String> row(FirstHour.Row row) {
        List<String> cells = new ArrayList<>(List.of(Html.element("strong", Html.text(measures.number(row.minute())))));
        for (Function<State, Measure> place : PLACES) {
            cells.add(cell(place.apply(row.mid()), place.apply(row.low()), place.apply(row.high())));
        }
        return cells;
    }

    private String cell(Measure mid, Measure low, Measure high) {
        String one = measures.number(low);
        String other = measures.number(high);
        String best = Html.element("strong", Html.text(measures.number(mid))).strip();
        return one.equals(other) ? best : best + " <span class=\"ends\">(" + Html.text(one + "–" + other) + ")</span>";
    }

    private String inline(MeasuredText words) {
        return Prose.inline(measures.words(words));
    }
}
