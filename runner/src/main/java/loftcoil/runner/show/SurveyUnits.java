package loftcoil.runner.show;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import loftcoil.engine.design.DesignField;
import loftcoil.engine.design.DesignFields;

/** The survey of a house in the units of the reader: what is shown of it, and what is typed into it. */
final class SurveyUnits {

    /** What is typed for a piece of pipe or a tap, by its name there, and its metric unit. */
    private static final Map<String, String> COLUMNS = Map.of(
            "length", "m", "level", "m", "slope", "mm/m", "laggingThickness", "mm", "around", "°C", "mixer", "°C");

    private final Shown shown;

    SurveyUnits(Shown shown) {
        this.shown = shown;
    }

    SurveyView.House house(SurveyView.House house) {
        return new SurveyView.House(
                house.name(),
                house.design(),
                house.stations().stream().map(this::station).toList(),
                standing(house.standing()),
                house.habits(),
                house.dwellings(),
                house.such());
    }

    private SurveyView.Station station(SurveyView.Station station) {
        return new SurveyView.Station(
                station.code(),
                station.label(),
                shown.option(station.help()),
                station.counts(),
                station.questions().stream().map(this::question).toList(),
                run(station.run()),
                station.taps().stream().map(this::tap).toList(),
                trunk(station.trunk()),
                shown.option(station.standing()),
                station.done());
    }

    private SurveyView.TrunkLine trunk(SurveyView.TrunkLine trunk) {
        return new SurveyView.TrunkLine(trunk.tube(), cell("length", trunk.length()), trunk.elbows90());
    }

    private SurveyView.Question question(SurveyView.Question asked) {
        return new SurveyView.Question(
                asked.path(),
                asked.label(),
                shown.option(asked.help()),
                shown.unit(asked.path(), asked.unit()),
                shown.options(asked.options()),
                shown.option(asked.allowed()),
                now(asked),
                asked.origin(),
                asked.optional(),
                shown.option(asked.otherwise()));
    }

    /** What stands there; a length under 1 m has its own unit. */
    private String now(SurveyView.Question asked) {
        String taped = shown.taped(asked.path(), asked.now(), asked.unit());
        return taped.endsWith("cm") || taped.endsWith("mm")
                ? taped
                : shown.number(asked.path(), asked.now(), asked.unit());
    }

    private SurveyView.Run run(SurveyView.Run run) {
        return new SurveyView.Run(
                run.code(),
                run.pieces().stream().map(this::piece).toList(),
                shown.option(run.words()),
                run.closes(),
                shown.options(run.moved()),
                shown.options(run.mends()));
    }

    private SurveyView.Piece piece(SurveyView.Piece piece) {
        return new SurveyView.Piece(
                piece.name(),
                piece.way(),
                cell("length", piece.length()),
                cell("slope", piece.slope()),
                piece.heading(),
                piece.elbows90(),
                piece.elbows45(),
                piece.tube(),
                piece.lagging(),
                cell("laggingThickness", piece.laggingThickness()),
                cell("around", piece.around()),
                piece.measured());
    }

    private SurveyView.TapLine tap(SurveyView.TapLine tap) {
        return new SurveyView.TapLine(
                tap.name(),
                cell("level", tap.level()),
                tap.tube(),
                cell("length", tap.length()),
                tap.elbows90(),
                cell("mixer", tap.mixer()),
                tap.from());
    }

    /** A number with its metric unit as it is shown. */
    private String cell(String column, String metric) {
        String unit = COLUMNS.getOrDefault(column, "");
        return metric.endsWith(" " + unit)
                ? shown.taped("", metric.substring(0, metric.length() - unit.length() - 1), unit)
                : metric;
    }

    private SurveyView.Standing standing(SurveyView.Standing standing) {
        return new SurveyView.Standing(
                standing.yours(),
                standing.assumed(),
                standing.borrowed(),
                standing.sketch(),
                shown.option(standing.words()),
                shown.option(standing.next()),
                shown.option(standing.plan()),
                shown.options(standing.open()),
                shown.options(standing.doubts()),
                standing.ahead(),
                shown.options(standing.otherwise()),
                standing.follows());
    }

    /** Answers as typed, each number with its unit; an option by the name the design has for it. */
    Map<String, String> told(Map<String, String> typed) {
        Map<String, String> back = new HashMap<>(typed);
        back.replaceAll((path, text) ->
                DesignFields.at(path).map(field -> told(path, text, field)).orElse(text));
        return back;
    }

    private String told(String path, String text, DesignField field) {
        if (field.allowed().startsWith(Typed.TWELVE)) {
            return Typed.listed(text).stream()
                    .map(one -> shown.withUnit(path, one, field.unit()))
                    .collect(Collectors.joining("; "));
        }
        return field.options().isEmpty()
                ? shown.withUnit(path, text, field.unit())
                : shown.chosen(field.options(), text);
    }

    /**
     * Lines of a table as typed; what was left as it was shown is as it stands.
     *
     * @param typed lines as sent
     * @param before the lines as they stand, in metric units
     */
    List<Map<String, String>> lines(List<Map<String, String>> typed, List<Map<String, String>> before) {
        List<Map<String, String>> lines = new ArrayList<>();
        for (int i = 0; i < typed.size(); i++) {
            Map<String, String> exact = i < before.size() ? before.get(i) : Map.of();
            Map<String, String> seen = new HashMap<>(exact);
            seen.replaceAll(this::cell);
            Map<String, String> line = Shown.unmoved(typed.get(i), seen, exact);
            line.replaceAll((column, text) ->
                    COLUMNS.containsKey(column) ? shown.withUnit("", text, COLUMNS.getOrDefault(column, "")) : text);
            lines.add(line);
        }
        return lines;
    }

    /** Temperatures as people remember them. */
    Map<String, String> temperatures(Map<String, String> typed, List<String> names) {
        Map<String, String> back = new HashMap<>(typed);
        names.forEach(name -> back.computeIfPresent(name, (same, text) -> shown.withUnit("", text, "°C")));
        return back;
    }
}
