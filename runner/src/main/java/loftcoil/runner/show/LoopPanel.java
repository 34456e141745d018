package loftcoil.runner.show;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loftcoil.engine.design.Design;
import loftcoil.engine.sheet.Currents;
import loftcoil.engine.sheet.Drawing;
import loftcoil.engine.sheet.FigureGroup;
import loftcoil.engine.sheet.Figures;
import loftcoil.engine.sheet.Headings;
import loftcoil.engine.sheet.Sheet;
import loftcoil.engine.sheet.SheetFigure;
import loftcoil.engine.words.Measure;
import loftcoil.engine.words.Units;

/** The learner's design at a glance. */
final class LoopPanel {

    private LoopPanel() {}

    static View.Design view(Design design, Units units) {
        return view(design, Headings.UNKNOWN, units);
    }

    /** The same, its pipes led as they were surveyed. */
    static View.Design view(Design design, Headings headings, Units units) {
        Sheet sheet = Sheet.of(design);
        View.Safety safety = SafetyWords.of(sheet.verdict(), sheet.design(), units);
        return new View.Design(
                design.name(),
                drawn(design, headings, units),
                LoopSvg.plan("From above: " + design.name(), scene(design, headings, Optional.empty()), units::of),
                figures(sheet, units),
                hour(sheet, safety, units),
                safety);
    }

    /** One state of many, so that nobody takes it for the verdict; a danger that says the same is told once. */
    private static String hour(Sheet sheet, View.Safety safety, Units units) {
        String words = sheet.loop().words(units);
        boolean told =
                safety.findings().stream().anyMatch(finding -> finding.text().startsWith(words));
        return told
                ? ""
                : "With the whole tank at "
                        + units.of(Measure.celsius(sheet.loop().tankC())) + ": " + words;
    }

    /** The learner's own house, its pipes led as they were surveyed. */
    static View.Picture drawn(Design design, Headings headings, Units units) {
        return LoopSvg.picture("Your loop: " + design.name(), scene(design, headings, Optional.empty()), units::of);
    }

    /** A house with its water as it runs when the tank is as warm as usual. */
    static View.Picture picture(String title, Design design, Units units) {
        return LoopSvg.picture(title, scene(design, Headings.UNKNOWN, Optional.empty()), units::of);
    }

    /**
     * The same with another house over it in the same frame, as a ghost.
     *
     * @param other the other house
     * @param words what it is
     */
    static View.Picture over(String title, Design design, Design other, String words, Units units) {
        return over(title, design, other, words, Headings.UNKNOWN, units);
    }

    /** The same, the pipes of both led as they were surveyed. */
    static View.Picture over(String title, Design design, Design other, String words, Headings headings, Units units) {
        Optional<HouseSvg.Ghost> ghost = Optional.of(new HouseSvg.Ghost(Drawing.of(other, headings), words));
        return LoopSvg.picture(title, scene(design, headings, ghost), units::of);
    }

    private static LoopSvg.Scene scene(Design design, Headings headings, Optional<HouseSvg.Ghost> ghost) {
        Currents currents = Currents.of(design, Sheet.USUAL_TANK_C);
        return new LoopSvg.Scene(Drawing.of(design, headings), Optional.of(currents), ghost);
    }

    static List<View.Figure> figures(Sheet sheet, Units units) {
        List<View.Figure> figures = new ArrayList<>();
        figures.add(new View.Figure(
                "tank taken at", units.of(Measure.celsius(sheet.loop().tankC()))));
        Figures.toRead(sheet).stream()
                .filter(SheetFigure::main)
                .forEach(figure -> figures.add(new View.Figure(label(figure, sheet, units), figure.words(units))));
        return figures;
    }

    /** The worst of all states is not known before the year has told the hottest tank. */
    private static String label(SheetFigure figure, Sheet sheet, Units units) {
        boolean soFar = figure.group() == FigureGroup.WORST && sheet.verdict().yearOpen();
        return units.said(figure.label()) + (soFar ? SafetyWords.SO_FAR : "");
    }
}
