package loftcoil.engine.build;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import loftcoil.engine.build.LogForm.Column;
import loftcoil.engine.design.Design;
import loftcoil.engine.words.Measure;
import loftcoil.engine.words.MeasureKind;
import loftcoil.engine.words.MeasuredText;
import loftcoil.engine.words.Sentences;

/** The forms to fill in: the first hour, and the years after. */
final class LogMaker {

    private static final Sentences SENTENCES = Sentences.read(LogMaker.class, "logs.properties");
    private static final int YEARS_OF_ROWS = 24;

    private LogMaker() {}

    static List<LogForm> of(Design design) {
        return List.of(firstHour(), years(design));
    }

    private static LogForm firstHour() {
        return form(
                "log.first-hour",
                List.of(
                        column("log.time", MeasureKind.TIME_MIN),
                        column("log.coil-outlet", MeasureKind.TEMP_C),
                        column("log.return-port", MeasureKind.TEMP_C),
                        column("log.coil-inlet", MeasureKind.TEMP_C),
                        column("log.tank-top", MeasureKind.TEMP_C),
                        column("log.tank-middle", MeasureKind.TEMP_C),
                        column("log.tank-bottom", MeasureKind.TEMP_C),
                        column("log.heard-and-felt")),
                FirstHourMaker.MINUTES.stream()
                        .map(minute -> MeasuredText.of(Measure.minutes(minute)))
                        .toList());
    }

    private static LogForm years(Design design) {
        List<Column> columns = new ArrayList<>(List.of(
                column("log.date"),
                column("log.level", MeasureKind.SMALL_LENGTH_MM),
                column("log.tank-top", MeasureKind.TEMP_C),
                column("log.coil-outlet", MeasureKind.TEMP_C),
                column("log.coil-inlet", MeasureKind.TEMP_C),
                column("log.vent-clear"),
                column("log.flue")));
        design.window().ifPresent(window -> columns.add(column("log.panes")));
        columns.add(column("log.done-and-noticed"));
        return form("log.years", columns, Collections.nCopies(YEARS_OF_ROWS, MeasuredText.of("")));
    }

    private static LogForm form(String code, List<Column> columns, List<MeasuredText> rows) {
        List<MeasuredText> said = SENTENCES.sayEach(code, List.of("title", "how"));
        return new LogForm(said.get(0), said.get(1), columns, rows);
    }

    private static Column column(String code) {
        return new Column(SENTENCES.say(code), Optional.empty());
    }

    private static Column column(String code, MeasureKind kind) {
        return new Column(SENTENCES.say(code), Optional.of(kind));
    }
}
