package loftcoil.runner.handout;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import loftcoil.engine.build.BuildSheet;
import loftcoil.engine.clear.Clears;
import loftcoil.engine.design.Origin;
import loftcoil.engine.design.ToCheck;
import loftcoil.engine.survey.Station;
import loftcoil.engine.words.MeasuredText;
import loftcoil.runner.show.ConductWords;
import loftcoil.runner.show.Html;

/** The first thing a builder reads: may it be built, what can hurt, what is not said yet. */
final class SheetTop {

    private final BuildSheet sheet;
    private final Optional<Clears> clears;
    private final MeasureText measures;

    private SheetTop(BuildSheet sheet, Optional<Clears> clears, MeasureText measures) {
        this.sheet = sheet;
        this.clears = clears;
        this.measures = measures;
    }

    static String of(BuildSheet sheet, Optional<Clears> clears, MeasureText measures, String day) {
        SheetTop top = new SheetTop(sheet, clears, measures);
        return Html.element(
                        "header",
                        Html.element("p", "kicker", "Build sheet")
                                + Html.element("h1", Html.text(sheet.design().name()))
                                + Html.element(
                                        "p",
                                        "small",
                                        Html.text(
                                                day + ", in " + measures.units().words()
                                                        + ". Computed with Loftcoil; check it against your own drawing before you cut.")))
                + top.verdict()
                + top.contents()
                + top.cautions()
                + top.asks()
                + top.values();
    }

    private String verdict() {
        boolean half = !sheet.sheet().verdict().open().isEmpty();
        boolean borrowed =
                sheet.reasons().isEmpty() && (half || !sheet.grounds().own());
        String heading = half && borrowed
                ? "Half of the sheet, not for cutting"
                : borrowed ? "A sketch, not for cutting" : sheet.buildable() ? "Finding" : "Do not build this as drawn";
        return Html.element(
                "div",
                borrowed ? "verdict" : "verdict " + (sheet.buildable() ? "good" : "bad"),
                Html.element("h2", Html.text(heading))
                        + Html.element("p", inline(sheet.verdict()))
                        + open()
                        + grounds());
    }

    /** Of a sheet that is shown before its year is there: what is missing in it. */
    private String open() {
        String open = sheet.sheet().verdict().open();
        return open.isEmpty()
                ? ""
                : Html.element(
                        "p",
                        "<strong>" + Html.text(open) + "</strong> " + Html.text("Below is what follows without them."));
    }

    /** How much of it is the builder's own, where the rest can be measured, and what looks like a slip. */
    private String grounds() {
        String where = Station.borrowed(sheet.design()).entrySet().stream()
                .map(stop -> stop.getKey().label() + " (" + stop.getValue() + ")")
                .collect(Collectors.joining("; "));
        String doubts = sheet.doubts().stream()
                .map(doubt -> Html.element("p", "small", "<strong>Is this so?</strong> " + inline(doubt)))
                .collect(Collectors.joining());
        return Html.element(
                        "p",
                        "small",
                        Html.text(sheet.grounds().words() + (where.isEmpty() ? "" : " Still borrowed: " + where + ".")))
                + doubts;
    }

    /** What nobody measured, with what stands there, so that it can be checked before it is built by. */
    private String values() {
        List<ToCheck> values = ToCheck.of(sheet.design());
        String lists = List.of(Origin.ASSUMED, Origin.BORROWED).stream()
                .map(origin -> values(
                        values.stream()
                                .filter(value -> value.origin() == origin)
                                .toList(),
                        origin == Origin.ASSUMED ? "Assumed" : "Borrowed from the example"))
                .collect(Collectors.joining());
        return lists.isEmpty() ? "" : Html.section("values", "Values to check before you build by them", lists);
    }

    private String values(List<ToCheck> values, String heading) {
        Map<String, List<String>> places = new LinkedHashMap<>();
        for (ToCheck value : values) {
            places.computeIfAbsent(place(value), any -> new ArrayList<>())
                    .add(Html.text(Station.asked(value.path())) + " "
                            + Html.element("strong", inline(value.value()) + ";")
                                    .strip());
        }
        List<String> lines = places.entrySet().stream()
                .map(place -> Html.TICK + " " + Html.text(place.getKey()) + ": "
                        + String.join(" ", place.getValue()).replaceFirst(";</strong>$", "</strong>"))
                .toList();
        return lines.isEmpty()
                ? ""
                : Html.element("p", "small", Html.text(heading) + ":") + EvenColumns.of("steps notes", lines);
    }

    /** Where a value is measured: the pipe or tap it belongs to, or else the stop on the way round the house. */
    private static String place(ToCheck value) {
        return value.item().isEmpty()
                ? Station.of(value.path()).map(Station::label).orElse("Design")
                : value.item();
    }

    private String contents() {
        String links = List.of(
                        "cautions=What can hurt",
                        "figures=Figures",
                        "elevation=Elevation",
                        "parts=Parts",
                        "cuts=Cutting list",
                        "fixings=Clips, bends and the coil",
                        "loads=Weights",
                        "filling=Filling and first fire",
                        "first-hour=The first hour",
                        "upkeep=Upkeep",
                        "logs=Log",
                        "conduct=" + ConductWords.TITLE)
                .stream()
                .map(entry -> entry.split("=", 2))
                .map(entry -> "<a href=\"#" + entry[0] + "\">" + entry[1] + "</a>\n")
                .collect(Collectors.joining());
        return "<nav class=\"contents\" aria-label=\"On this sheet\">" + links + "</nav>\n";
    }

    private String cautions() {
        String found = sheet.cautions().isEmpty()
                ? Html.element("p", Html.text(nothingFound()))
                : new CautionList(measures).all(sheet.sheet().verdict(), clears);
        return Html.section(
                "cautions",
                "What can hurt",
                found
                        + Html.element(
                                "p",
                                "small",
                                "Codes of your country and the licensed trades come before this sheet. Hot water scalds, a shut or"
                                        + " dry loop can burst, a full tank is heavy, and a fire needs a flue and air."));
    }

    private String nothingFound() {
        String open = sheet.sheet().verdict().open();
        return open.isEmpty()
                ? "None of our checks found a danger in this design. That is no promise that there is none."
                : "Nothing was found so far. " + open;
    }

    private String asks() {
        if (sheet.asks().isEmpty()) {
            return "";
        }
        return Html.section(
                "asks",
                "Not said in the design, and to be settled before you build",
                EvenColumns.of(
                        "steps",
                        sheet.asks().stream()
                                .map(ask -> Html.TICK + " " + inline(ask.words()))
                                .toList()));
    }

    private String inline(MeasuredText words) {
        return Prose.inline(measures.words(words));
    }
}
