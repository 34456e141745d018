package loftcoil.runner.show;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import loftcoil.engine.design.Design;
import loftcoil.engine.loop.SteadyFlow;
import loftcoil.engine.sheet.Drawing;
import loftcoil.engine.sheet.LoopFigures;
import loftcoil.engine.sheet.Sheet;

/** The learner's design at a glance. */
final class LoopPanel {

    private LoopPanel() {}

    static View.Design view(Design design) {
        Sheet sheet = Sheet.of(design);
        return new View.Design(
                design.name(), drawn(design), figures(sheet), sheet.loop().words(), SafetyWords.of(sheet.verdict()));
    }

    static View.Picture drawn(Design design) {
        return LoopSvg.picture("Your loop: " + design.name(), Drawing.of(design));
    }

    static List<View.Figure> figures(Sheet sheet) {
        LoopFigures loop = sheet.loop();
        List<View.Figure> figures = new ArrayList<>();
        figures.add(figure("tank taken at", "%.0f °C", loop.tankC()));
        loop.flow().ifPresent(flow -> flowing(figures, flow));
        double night = loop.coldFire().flowKgPerS();
        figures.add(figure(
                "fire out, the loop takes from the tank",
                night == 0 ? "nothing: it stands still" : "%.0f W",
                loop.coldFire().lossW()));
        figures.add(figure("tank, full", "%.0f kg", sheet.tank().fullMassKg()));
        figures.add(
                figure("water grows, 10 to 90 °C, by", "%.1f L", sheet.tank().expansionL()));
        return figures;
    }

    private static void flowing(List<View.Figure> figures, SteadyFlow flow) {
        figures.add(figure("flow", "%.2f L/min", flow.flowLPerMin()));
        figures.add(figure("drive", "%.0f Pa", flow.drivePa()));
        figures.add(figure("out of the coil", "%.1f °C", flow.coil().endC()));
        figures.add(
                figure("nearest to boiling", "%.0f °C below", flow.boilMargin().marginK()));
        figures.add(figure("heat into the tank", "%.2f kW", flow.heat().tankW() / 1000));
    }

    private static View.Figure figure(String label, String form, double value) {
        return new View.Figure(label, String.format(Locale.ROOT, form, value));
    }
}
