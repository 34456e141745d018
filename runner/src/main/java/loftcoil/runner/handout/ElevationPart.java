package loftcoil.runner.handout;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import loftcoil.engine.build.BuildSheet;
import loftcoil.engine.build.CutList;
import loftcoil.engine.design.Coil;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.LaggingChoice;
import loftcoil.engine.design.Leg;
import loftcoil.engine.sheet.Currents;
import loftcoil.engine.sheet.Drawing;
import loftcoil.engine.sheet.Sheet;
import loftcoil.engine.words.Measure;
import loftcoil.engine.words.MeasureKind;
import loftcoil.runner.show.DrawingWords;
import loftcoil.runner.show.Html;

/** The loop in elevation, and what its marks stand for. */
final class ElevationPart {

    /** Left for head, heading and caption, mm. */
    private static final double ABOVE_AND_BELOW_MM = 150;

    /** So many times as high as long is upright to the eye. */
    private static final double UPRIGHT = 30;

    private final MeasureText measures;

    private ElevationPart(MeasureText measures) {
        this.measures = measures;
    }

    static String of(BuildSheet sheet, MeasureText measures, Paper paper) {
        Drawing drawing = sheet.drawing();
        DrawingScale.Room room = new DrawingScale.Room(
                paper.widthMm() - 2 * Frame.MARGIN_MM - 2 * ElevationSvg.MARGIN_MM - ElevationSvg.LABELS_MM,
                paper.heightMm() - ABOVE_AND_BELOW_MM);
        DrawingScale scale = DrawingScale.fitting(withPlan(drawing), room, measures.units());
        Currents currents = Currents.of(sheet.design(), Sheet.USUAL_TANK_C);
        String svg = ElevationSvg.of(drawing, Optional.of(currents), pieces(sheet.cuts()), measures, scale);
        return Html.section(
                "elevation",
                "The house from the side and from above, " + scale.words(),
                "<div class=\"drawing\">" + svg + "</div>\n<div class=\"drawing\">"
                        + ElevationSvg.plan(drawing, Optional.of(currents), measures, scale) + "</div>\n"
                        + Html.element(
                                "p",
                                "small",
                                "From the side every level and rise is true; from above every level run has its length. "
                                        + (drawing.plan().surveyed()
                                                ? "The runs lead as you took them with a compass."
                                                : "Which way a level run goes is yours to choose until you survey it.")
                                        + DrawingWords.frame(
                                                sheet.design().site().roof())
                                        + DrawingWords.freeOfWhatBurns(drawing)
                                        + " The pipes to the taps are true in level, not across. Colours are those of the water with the tank at "
                                        + measures.of(Measure.celsius(currents.tankC())) + ".")
                        + new ElevationPart(measures).legend(sheet.design(), drawing));
    }

    /** The elevation with the plan below it. */
    private static Drawing.Bounds withPlan(Drawing drawing) {
        Drawing.Bounds side = drawing.bounds();
        Drawing.Bounds walls = drawing.plan().walls();
        return new Drawing.Bounds(
                Math.min(side.leftM(), walls.leftM()),
                side.bottomM() - (walls.topM() - walls.bottomM()),
                Math.max(side.rightM(), walls.rightM()),
                side.topM());
    }

    /** Marks of the pieces in the cutting list by the mark of their pipe. */
    static Map<String, List<String>> pieces(CutList cuts) {
        return cuts.pieces().stream()
                .map(CutList.Piece::mark)
                .collect(Collectors.groupingBy(mark -> mark.replaceFirst("-.*", "")));
    }

    private String legend(Design design, Drawing drawing) {
        List<Drawing.PlanRun> runs = drawing.plan().runs();
        List<List<String>> rows = new ArrayList<>();
        for (Leg leg : design.coldLegs()) {
            rows.add(leg(runs.get(rows.size()), leg));
        }
        rows.add(coil(runs.get(rows.size()).pipe().mark(), design.coil()));
        for (Leg leg : design.hotLegs()) {
            rows.add(leg(runs.get(rows.size()), leg));
        }
        return Html.table(
                "legend", List.of("mark", "pipe", "tube", "length", "rise", "slope", "leads", "lagging"), rows);
    }

    private List<String> leg(Drawing.PlanRun run, Leg leg) {
        String leads = DrawingWords.leads(run);
        return row(
                List.of(run.pipe().mark(), leg.name(), leg.tube()),
                leg.lengthM(),
                leg.riseM(),
                List.of(
                        slope(leg.levelRunM(), leg.riseM(), measures),
                        leads.isEmpty() ? "yours" : leads,
                        lagging(leg)));
    }

    private List<String> coil(String mark, Coil coil) {
        return row(
                List.of(mark, "coil", coil.tube()),
                coil.lengthM(),
                coil.riseM(),
                List.of(slope(coil), "", "bare, in the fire"));
    }

    private static String slope(Coil coil) {
        return coil.riseM() > 0 ? "rising all the way" : coil.riseM() < 0 ? "falls: it traps air" : "level";
    }

    /** Rise for each metre of run where a level can show it; steeper as an angle. */
    static String slope(double runM, double riseM, MeasureText measures) {
        if (riseM == 0) {
            return "level";
        }
        String way = riseM > 0 ? "rises " : "falls ";
        if (Math.abs(riseM) > runM * UPRIGHT) {
            return riseM > 0 ? "straight up" : "straight down";
        }
        if (Math.abs(riseM) > runM) {
            double angle = Math.toDegrees(Math.atan2(Math.abs(riseM), runM));
            return way + measures.of(new Measure(angle, MeasureKind.ANGLE_DEG));
        }
        return way + measures.of(new Measure(1000 * Math.abs(riseM) / runM, MeasureKind.SLOPE_MM_PER_M));
    }

    private List<String> row(List<String> before, double lengthM, double riseM, List<String> after) {
        List<String> row = new ArrayList<>(before);
        row.add(measures.of(Measure.metres(lengthM)));
        row.add((riseM > 0 ? "+" : "") + measures.of(Measure.metres(riseM)));
        row.addAll(after);
        return row.stream().map(Html::text).toList();
    }

    private String lagging(Leg leg) {
        return leg.lagging()
                .filter(choice -> choice.thicknessMm() > 0)
                .map(this::lagging)
                .orElse("bare");
    }

    private String lagging(LaggingChoice choice) {
        return choice.material() + ", " + measures.of(Measure.millimetres(choice.thicknessMm()));
    }
}
