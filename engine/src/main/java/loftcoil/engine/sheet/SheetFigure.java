package loftcoil.engine.sheet;

import loftcoil.engine.words.Measure;
import loftcoil.engine.words.Units;

/**
 * One figure of a sheet.
 *
 * @param key where it stands in the sheet's JSON, such as {@code loop.flowLPerMin}; a tap goes by its name, as in
 *     {@code taps[wash tub].flowLPerMin}, so that taps are compared with themselves
 * @param group the figures it belongs to
 * @param figure what it is
 * @param label what it is called, with the tap or month it belongs to
 * @param value its value, in the unit of its kind
 * @param note what is said behind its value; mostly empty
 */
public record SheetFigure(String key, FigureGroup group, Figure<?> figure, String label, double value, String note) {

    /** Whether it is one of the few that are shown first. */
    public boolean main() {
        return figure.main() && group.main();
    }

    /** Its value as a person reads it. */
    public Measure measure() {
        return figure.measure(value);
    }

    /** Its value with its unit and what is said behind it. */
    public String words(Units units) {
        return units.of(measure()) + (note.isEmpty() ? "" : ", " + units.said(note));
    }
}
