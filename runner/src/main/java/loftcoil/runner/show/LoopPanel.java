package loftcoil.runner.show;

import java.util.ArrayList;
import java.util.List;
import loftcoil.engine.design.Design;
import loftcoil.engine.sheet.Drawing;
import loftcoil.engine.sheet.Figures;
import loftcoil.engine.sheet.Sheet;
import loftcoil.engine.sheet.SheetFigure;
import loftcoil.engine.words.Measure;

/** The learner's design at a glance. */
final class LoopPanel {

    private LoopPanel() {}

    static View.Design view(Design design) {
        Sheet sheet = Sheet.of(design);
        return new View.Design(
                design.name(),
                drawn(design),
                figures(sheet),
                sheet.loop().words(),
                SafetyWords.of(sheet.verdict(), sheet.grounds()));
    }

    static View.Picture drawn(Design design) {
        return LoopSvg.picture("Your loop: " + design.name(), Drawing.of(design));
    }

    static List<View.Figure> figures(Sheet sheet) {
        List<View.Figure> figures = new ArrayList<>();
        figures.add(new View.Figure(
                "tank taken at", Measure.celsius(sheet.loop().tankC()).metric()));
        Figures.toRead(sheet).stream()
                .filter(SheetFigure::main)
                .forEach(figure -> figures.add(new View.Figure(figure.label(), figure.words())));
        return figures;
    }
}
