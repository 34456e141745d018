package loftcoil.engine.sheet;

import java.time.Month;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import loftcoil.engine.run.EnergyBook;
import loftcoil.engine.run.MonthRow;
import loftcoil.engine.run.YearRun;
import loftcoil.engine.run.YearSpread;

/** The year as lines of text: the account and the table of months. */
final class YearText {

    private static final String ROW = "  %-5s %6s %6s %6s %6s %7s %6s %6s %6s %7s %6s";

    private final List<String> lines = new ArrayList<>();

    private YearText() {}

    static List<String> lines(YearSpread years) {
        YearText text = new YearText();
        text.all(years);
        return List.copyOf(text.lines);
    }

    private void all(YearSpread years) {
        YearRun year = years.mid();
        lines.add("Year, kWh of heat");
        lines.add(String.format(
                Locale.ROOT,
                ROW,
                "",
                "sun",
                "coil",
                "used",
                "lost",
                "stored",
                "short",
                "wood",
                "top",
                "boiling",
                "litres"));
        lines.add(String.format(Locale.ROOT, ROW, "", "", "", "", "", "", "", "kg", "°C", "min", "hot"));
        for (MonthRow row : year.months()) {
            String name = Month.of(row.month()).getDisplayName(TextStyle.SHORT, Locale.ENGLISH);
            lines.add(row(name, row.energy(), rest(row)));
        }
        lines.add(row("year", year.energy(), new double[] {
            year.shortfallKWh(),
            year.woodKg(),
            year.hottestC(),
            year.boilingMin(),
            year.litres().asWanted()
        }));
        spread(years);
        lines.add(String.format(
                Locale.ROOT,
                "  Lost through lagging %.0f, panes %.0f, legs lit %.0f, legs at rest %.0f, as steam %.0f kWh.",
                year.energy().losses().tank(),
                year.energy().losses().window(),
                year.energy().losses().legsLit(),
                year.energy().losses().legsOut(),
                year.energy().losses().steam()));
    }

    private void spread(YearSpread years) {
        years.low().ifPresent(low -> lines.add(end("With the least heat the fire may give", low)));
        years.high().ifPresent(high -> lines.add(end("With the most heat the fire may give", high)));
    }

    private static String end(String when, YearRun year) {
        return String.format(
                Locale.ROOT,
                "  %s: coil %.0f, used %.0f, short %.0f kWh, boiling %.0f min.",
                when,
                year.energy().coilKWh(),
                year.energy().usedKWh(),
                year.shortfallKWh(),
                year.boilingMin());
    }

    private static double[] rest(MonthRow row) {
        return new double[] {
            row.shortfallKWh(),
            row.woodKg(),
            row.hottestC(),
            row.boilingMin(),
            row.litres().asWanted()
        };
    }

    private static String row(String name, EnergyBook book, double[] rest) {
        return String.format(
                Locale.ROOT,
                ROW,
                name,
                whole(book.solarKWh()),
                whole(book.coilKWh()),
                whole(book.usedKWh()),
                whole(book.lossKWh()),
                String.format(Locale.ROOT, "%.1f", Math.rint(10 * book.storedKWh()) / 10 + 0.0),
                whole(rest[0]),
                whole(rest[1]),
                whole(rest[2]),
                whole(rest[3]),
                whole(rest[4]));
    }

    private static String whole(double value) {
        // No minus before a nought.
        return String.format(Locale.ROOT, "%.0f", Math.rint(value) + 0.0);
    }
}
