package loftcoil.runner.show;

import java.util.ArrayList;
import java.util.List;
import loftcoil.engine.design.Design;
import loftcoil.engine.sheet.Drawing;
import loftcoil.engine.sheet.Figures;
import loftcoil.engine.sheet.Sheet;
import loftcoil.engine.sheet.SheetFigure;
import loftcoil.engine.words.Measure;
import loftcoil.engine.words.Units;

/** The learner's design at a glance. */
final class LoopPanel {

    private LoopPanel() {}

    static View.Design view(Design design, Units units) {
        Sheet sheet = Sheet.of(design);
        return new View.Design(
                design.name(),
                drawn(design, units),
                figures(sheet, units),
                sheet.loop().words(units),
                SafetyWords.of(sheet.verdict(), sheet.grounds(), units));
    }

    static View.Picture drawn(Design design, Units units) {
        return LoopSvg.picture("Your loop: " + design.name(), Drawing.of(design), units);
    }

    static List<View.Figure> figures(Sheet sheet, Units units) {
        List<View.Figure> figures = new ArrayList<>();
        figures.add(new View.Figure(
                "tank taken at", units.of(Measure.celsius(sheet.loop().tankC()))));
        Figures.toRead(sheet).stream()
                .filter(SheetFigure::main)
                .forEach(figure -> figures.add(new View.Figure(units.said(figure.label()), figure.words(units))));
        return figures;
    }
}
