package loftcoil.runner.show;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loftcoil.engine.design.Design;
import loftcoil.engine.sheet.Currents;
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
                design.name(), drawn(design), figures(sheet), sheet.loop().words(), SafetyWords.of(sheet.verdict()));
    }

    static View.Picture drawn(Design design) {
        return picture("Your loop: " + design.name(), design);
    }

    /** A house with its water as it runs when the tank is as warm as usual. */
    static View.Picture picture(String title, Design design) {
        Currents currents = Currents.of(design, Sheet.USUAL_TANK_C);
        return LoopSvg.picture(
                title, new LoopSvg.Shown(Drawing.of(design), Optional.of(currents), Optional.empty()), Measure::metric);
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
