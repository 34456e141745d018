package loftcoil.engine.sheet;

import java.time.Month;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import loftcoil.engine.caution.Caution;
import loftcoil.engine.run.MonthRow;
import loftcoil.engine.survey.Doubts;
import loftcoil.engine.words.Measure;
import loftcoil.engine.words.MeasuredText;
import loftcoil.engine.words.Units;

/** A sheet as lines of text for a person. */
public final class SheetText {

    private static final int WIDTH = 76;
    private static final String ENDS = "%-58s%11s%11s";
    private static final String LOW = "low.";
    private static final String HIGH = "high.";

    /** The groups that stand by themselves, in order; the ends of a spread stand beside them. */
    private static final List<FigureGroup> SHOWN = List.of(
            FigureGroup.LOOP,
            FigureGroup.NIGHT,
            FigureGroup.STARTS,
            FigureGroup.WORST,
            FigureGroup.COIL,
            FigureGroup.SCALE,
            FigureGroup.FLUE,
            FigureGroup.FIRST_FIRE,
            FigureGroup.TANK,
            FigureGroup.FROST,
            FigureGroup.TAPS,
            FigureGroup.PANES,
            FigureGroup.YEAR,
            FigureGroup.CLEAR_WEEK,
            FigureGroup.DULL_WEEK);

    private final List<SheetFigure> figures;
    private final Function<Caution, List<MeasuredText>> more;
    private final Units units;
    private final List<String> lines = new ArrayList<>();

    private SheetText(List<SheetFigure> figures, Function<Caution, List<MeasuredText>> more, Units units) {
        this.figures = figures;
        this.more = more;
        this.units = units;
    }

    /** The sheet as lines without line breaks, in metric units. */
    public static List<String> lines(Sheet sheet) {
        return lines(sheet, Units.METRIC, caution -> List.of());
    }

    /**
     * The same, with more about each caution.
     *
     * @param units whose units it is in
     * @param more what is known of a caution besides, a heading first and its items after it
     */
    public static List<String> lines(Sheet sheet, Units units, Function<Caution, List<MeasuredText>> more) {
        SheetText text = new SheetText(Figures.toRead(sheet), more, units);
        text.all(sheet);
        return List.copyOf(text.lines);
    }

    private void all(Sheet sheet) {
        lines.add(sheet.design().name());
        lines.add(sheet.grounds().words());
        Doubts.of(sheet.design()).forEach(doubt -> wrapped("", "Is this so? " + units.words(doubt)));
        for (FigureGroup group : SHOWN) {
            group(sheet, group);
        }
        months(sheet);
        lines.add("");
        lines.add("Cautions");
        if (sheet.cautions().isEmpty()) {
            lines.add(
                    sheet.verdict().open().isEmpty()
                            ? "  none: nothing was found; that is no promise that there is nothing"
                            : "  none so far");
        }
        if (!sheet.verdict().open().isEmpty()) {
            lines.add("  " + sheet.verdict().open());
        }
        sheet.verdict().leading().forEach(this::caution);
        if (!sheet.verdict().following().isEmpty()) {
            lines.add("");
            lines.add("Further cautions (" + sheet.verdict().followingWords() + ")");
            sheet.verdict().following().forEach(this::caution);
        }
        if (!sheet.asks().isEmpty()) {
            lines.add("");
            lines.add("Not said in the design");
            sheet.asks().forEach(ask -> wrapped("  ", units.words(ask.words()) + " (" + ask.field() + ")"));
        }
    }

    private void group(Sheet sheet, FigureGroup group) {
        List<SheetFigure> own =
                figures.stream().filter(figure -> figure.group() == group).toList();
        if (own.isEmpty()) {
            return;
        }
        lines.add("");
        if (group == FigureGroup.LOOP) {
            lines.add(group.words() + ", whole tank at "
                    + units.of(Measure.celsius(sheet.loop().tankC())));
            wrapped("  ", sheet.loop().words(units));
        } else {
            lines.add(group.words());
        }
        if (group == FigureGroup.STARTS) {
            sheet.starts().ifPresent(starts -> wrapped("  ", starts.words()));
        }
        boolean ends = own.stream().anyMatch(figure -> end(figure, LOW).isPresent());
        if (ends) {
            lines.add(String.format(Locale.ROOT, ENDS, "", "least heat", "most heat"));
        }
        own.forEach(figure -> lines.add(withEnds(figure)));
        if (group == FigureGroup.LOOP) {
            sheet.spread().ifPresent(this::still);
        }
    }

    private void still(HeatSpread spread) {
        if (!spread.low().circulates()) {
            lines.add("  with the least heat nothing flows without boiling");
        }
        if (!spread.high().circulates()) {
            lines.add("  with the most heat nothing flows without boiling");
        }
    }

    /** The figure, and what it is with the least and with the most heat the fire may give. */
    private String withEnds(SheetFigure figure) {
        Optional<SheetFigure> low = end(figure, LOW);
        Optional<SheetFigure> high = end(figure, HIGH);
        String label = String.format(Locale.ROOT, "  %-38s ", units.said(figure.label()));
        if (low.isEmpty() && high.isEmpty()) {
            return label + figure.words(units);
        }
        String values = String.format(Locale.ROOT, ENDS, label + units.of(figure.measure()), number(low), number(high));
        return values + (figure.note().isEmpty() ? "" : "  " + units.said(figure.note()));
    }

    private Optional<SheetFigure> end(SheetFigure figure, String end) {
        String path = figure.group().path();
        String key = path + end + figure.key().substring(path.length());
        return figures.stream().filter(other -> other.key().equals(key)).findFirst();
    }

    private String number(Optional<SheetFigure> end) {
        return end.map(figure -> units.number(figure.measure())).orElse("none");
    }

    /** A column for each figure of a month that has a heading. */
    private void months(Sheet sheet) {
        sheet.year().ifPresent(years -> {
            List<Figure<MonthRow>> columns = Figures.MONTH.stream()
                    .filter(figure -> !figure.head().isEmpty())
                    .toList();
            lines.add("");
            lines.add(FigureGroup.MONTHS.words());
            lines.add(cells("", columns, Figure::head));
            lines.add(cells("", columns, figure -> units.unit(figure.kind())));
            years.mid()
                    .months()
                    .forEach(row -> lines.add(cells(
                            Month.of(row.month()).getDisplayName(TextStyle.SHORT, Locale.ENGLISH),
                            columns,
                            figure -> units.number(figure.measure(figure.value().applyAsDouble(row))))));
        });
    }

    private String cells(String first, List<Figure<MonthRow>> columns, Function<Figure<MonthRow>, String> cell) {
        StringBuilder line = new StringBuilder(String.format(Locale.ROOT, "  %-4s", first));
        columns.forEach(figure -> line.append(String.format(Locale.ROOT, cellFormat(), cell.apply(figure))));
        return line.toString().stripTrailing();
    }

    /** A flow in US gallons has a longer unit. */
    private String cellFormat() {
        return units == Units.US ? " %9s" : " %7s";
    }

    private void caution(Caution caution) {
        lines.add("  " + caution.severity().label() + " " + caution.code());
        wrapped("    ", caution.text(units));
        caution.happens().ifPresent(words -> wrapped("    ", units.words(words)));
        wrapped("    ", "Source: " + caution.source(units));
        more.apply(caution).forEach(words -> wrapped("    ", units.words(words)));
    }

    private void wrapped(String indent, String text) {
        StringBuilder line = new StringBuilder(indent);
        for (String word : text.split(" ", -1)) {
            if (line.length() > indent.length() && line.length() + word.length() > WIDTH) {
                lines.add(line.toString().stripTrailing());
                line = new StringBuilder(indent);
            }
            line.append(word).append(' ');
        }
        lines.add(line.toString().stripTrailing());
    }
}
