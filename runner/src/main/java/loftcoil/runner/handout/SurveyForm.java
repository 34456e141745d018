package loftcoil.runner.handout;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import loftcoil.engine.design.DesignField;
import loftcoil.engine.design.DesignFields;
import loftcoil.engine.survey.HabitAsked;
import loftcoil.engine.survey.Station;
import loftcoil.engine.words.MeasureKind;
import loftcoil.engine.words.Units;
import loftcoil.runner.show.Html;

/** The survey of a house as a form to carry about with a tape: every station, every question, blank lines for pipes and taps. */
public final class SurveyForm {

    private static final int PIPE_ROWS = 10;
    private static final int TAP_ROWS = 6;
    private static final String ANSWERS = "answers";
    private static final List<String> HEADINGS = List.of("what", "in", "answer", "m/g");
    private static final String TITLE = "Measuring a house";

    private SurveyForm() {}

    /** The form as one HTML file that needs no other and runs no script. */
    public static String html(Paper paper, Units units) {
        return frame(paper).forBrowser(body(units));
    }

    /** The form as PDF. */
    public static byte[] pdf(Paper paper, Units units) {
        return HandoutPdf.of(frame(paper).forPdf(body(units)));
    }

    private static Frame frame(Paper paper) {
        return new Frame(
                TITLE,
                "A form to measure a house with, from the heater to the taps.",
                new Frame.Head(TITLE, "m measured, g guessed, blank: not known"),
                paper);
    }

    private static String body(Units units) {
        MeasureText measures = new MeasureText(units);
        StringBuilder body = new StringBuilder(Html.element("h1", TITLE));
        body.append(Html.element(
                "p",
                "Take a tape, a level, a compass, a thermometer and a strip of paper. Write m behind what you measured and g behind what "
                        + "you guessed; leave blank what you do not know. Heater cold, and never alone on a ladder. Units may be any "
                        + "you like: write them down."));
        for (Station station : Station.values()) {
            body.append(Html.section("form-" + station.code(), station.label(), station(station, measures)));
        }
        return body.toString();
    }

    private static String station(Station station, MeasureText measures) {
        String help = Html.element("p", Prose.inline(measures.words(station.help())));
        return help
                + switch (station) {
                    case HOT_RUN, COLD_RUN ->
                        rows(
                                List.of(
                                        "no.",
                                        "up, down, along",
                                        "length",
                                        "climbs or falls",
                                        "turns",
                                        "90°",
                                        "45°",
                                        "tube",
                                        "lagging",
                                        "where it runs",
                                        "m/g"),
                                PIPE_ROWS);
                    case TAPS ->
                        Html.table(
                                        ANSWERS,
                                        HEADINGS,
                                        List.of(
                                                List.of(
                                                        "Pipe from the tank that several taps share: its tube",
                                                        "name",
                                                        "",
                                                        ""),
                                                List.of("Length of that pipe", "length", "", ""),
                                                List.of("Its elbows", "number", "", "")))
                                + rows(
                                        List.of(
                                                "no.",
                                                "name",
                                                "from tank or shared pipe",
                                                "mouth above floor",
                                                "tube",
                                                "length",
                                                "elbows",
                                                "mixing valve",
                                                "m/g"),
                                        TAP_ROWS);
                    case CLIMATE -> months();
                    case PEOPLE -> habits() + questions(station, measures);
                    default -> questions(station, measures);
                };
    }

    private static String questions(Station station, MeasureText measures) {
        List<List<String>> rows =
                station.paths().stream().map(path -> question(path, measures)).toList();
        return Html.table(ANSWERS, HEADINGS, rows);
    }

    private static List<String> question(String path, MeasureText measures) {
        DesignField field = DesignFields.at(path).orElseThrow();
        return List.of(
                Html.text(Station.asked(path)) + Html.element("div", "quiet", Html.text(field.help())),
                Html.text(unit(field, measures)),
                "",
                "");
    }

    private static String habits() {
        List<List<String>> rows = Stream.of(HabitAsked.values())
                .map(asked -> List.of(Html.text(asked.label()), asked.isTap() ? "name" : "number", "", ""))
                .toList();
        return Html.table(ANSWERS, HEADINGS, rows);
    }

    private static String unit(DesignField field, MeasureText measures) {
        if (!field.options().isEmpty()) {
            return field.options().size() > 6
                    ? "name"
                    : field.options().stream().map(SurveyForm::plain).collect(Collectors.joining(", "));
        }
        // A kind may be shown in a larger unit than its fields are kept in: openings for air in m², not in cm².
        boolean asKept = field.kind() == MeasureKind.NONE || field.kind() == MeasureKind.COUNT || field.inKind() != 1;
        return asKept ? field.unit() : measures.unitToWrite(field.kind());
    }

    private static String plain(String option) {
        return option.equals("true") ? "yes" : option.equals("false") ? "no" : option;
    }

    private static String months() {
        List<String> headings = new ArrayList<>(List.of(""));
        headings.addAll(List.of("J", "F", "M", "A", "M", "J", "J", "A", "S", "O", "N", "D"));
        return Html.table("log", headings, List.of(blank("sun on the level, kWh/m² a day", 12), blank("air, °C", 12)));
    }

    private static String rows(List<String> headings, int count) {
        List<List<String>> rows = new ArrayList<>();
        for (int i = 1; i <= count; i++) {
            rows.add(blank(Integer.toString(i), headings.size() - 1));
        }
        return Html.table("log", headings, rows);
    }

    private static List<String> blank(String first, int more) {
        List<String> row = new ArrayList<>(List.of(Html.text(first)));
        row.addAll(Collections.nCopies(more, ""));
        return row;
    }
}
