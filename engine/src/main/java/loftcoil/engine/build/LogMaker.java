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

/** The forms to fill in: the first hour, and the years after. */
final class LogMaker {

    private static final List<Integer> MINUTES = List.of(0, 1, 2, 5, 10, 15, 20, 30, 45, 60);
    private static final int YEARS_OF_ROWS = 16;

    private LogMaker() {}

    static List<LogForm> of(Design design) {
        return List.of(firstHour(), years(design));
    }

    private static LogForm firstHour() {
        List<MeasuredText> rows = new ArrayList<>();
        MINUTES.forEach(minute -> rows.add(MeasuredText.of(Measure.minutes(minute))));
        return new LogForm(
                "The first hour",
                MeasuredText.of(
                        "Write down what you read and feel; cold, warm, hot or too hot to hold will do where there is no"
                                + " thermometer. Date, wood and weather belong beside it."),
                List.of(
                        new Column("Time", Optional.of(MeasureKind.TIME_MIN)),
                        temperature("Coil outlet"),
                        temperature("Return port"),
                        temperature("Coil inlet"),
                        temperature("Tank top"),
                        temperature("Tank middle"),
                        temperature("Tank bottom"),
                        new Column("Heard and felt", Optional.empty())),
                rows);
    }

    private static LogForm years(Design design) {
        List<Column> columns = new ArrayList<>(List.of(
                new Column("Date", Optional.empty()),
                new Column("Level", Optional.of(MeasureKind.SMALL_LENGTH_MM)),
                temperature("Tank top"),
                temperature("Coil outlet"),
                temperature("Coil inlet"),
                new Column("Vent clear", Optional.empty()),
                new Column("Flue", Optional.empty())));
        design.window().ifPresent(window -> columns.add(new Column("Panes", Optional.empty())));
        columns.add(new Column("Done and noticed", Optional.empty()));
        return new LogForm(
                "Months and years",
                MeasuredText.of("A line each month, and one for everything you change."),
                columns,
                Collections.nCopies(YEARS_OF_ROWS, MeasuredText.of("")));
    }

    private static Column temperature(String heading) {
        return new Column(heading, Optional.of(MeasureKind.TEMP_C));
    }
}
