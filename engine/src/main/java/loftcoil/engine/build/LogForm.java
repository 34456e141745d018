package loftcoil.engine.build;

import java.util.List;
import java.util.Optional;
import loftcoil.engine.words.MeasureKind;
import loftcoil.engine.words.MeasuredText;

/**
 * A form to fill in by hand.
 *
 * @param title its heading
 * @param how how to fill it in
 * @param columns columns from left to right
 * @param rows first cells of the rows; empty text where the whole row is blank
 */
public record LogForm(MeasuredText title, MeasuredText how, List<Column> columns, List<MeasuredText> rows) {

    /** Keeps copies of the lists. */
    public LogForm {
        columns = List.copyOf(columns);
        rows = List.copyOf(rows);
    }

    /**
     * A column.
     *
     * @param heading its heading
     * @param kind what is written in it, so that its unit can be named; empty for words
     */
    public record Column(MeasuredText heading, Optional<MeasureKind> kind) {}
}
