package loftcoil.runner.handout;

import java.util.ArrayList;
import java.util.List;
import loftcoil.engine.build.BuildSheet;
import loftcoil.engine.design.Coil;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.LaggingChoice;
import loftcoil.engine.design.Leg;
import loftcoil.engine.sheet.Drawing;
import loftcoil.engine.words.Measure;
import loftcoil.engine.words.MeasureKind;
import loftcoil.runner.show.Html;

/** The loop in elevation, and what its marks stand for. */
final class ElevationPart {

    /** Margins of the paper as the style sheet has them, mm. */
    private static final double SIDES_MM = 32;

    private static final double ROUND_DRAWING_MM = 14;
    /** Left for head, heading and caption, mm. */
    private static final double ABOVE_AND_BELOW_MM = 112;

    /** So many times as high as long is upright to the eye. */
    private static final double UPRIGHT = 30;

    private final MeasureText measures;

    private ElevationPart(MeasureText measures) {
        this.measures = measures;
    }

    static String of(BuildSheet sheet, MeasureText measures, Paper paper) {
        Drawing drawing = sheet.drawing();
        DrawingScale.Room room = new DrawingScale.Room(
                paper.widthMm() - SIDES_MM - ROUND_DRAWING_MM - ElevationSvg.LABELS_MM,
                paper.heightMm() - ABOVE_AND_BELOW_MM);
        DrawingScale scale = DrawingScale.fitting(drawing.bounds(), room, measures.units());
        String svg = ElevationSvg.of(drawing, marks(sheet.design()), measures, scale);
        return Html.section(
                "elevation",
                "Elevation, " + scale.words(),
                "<div class=\"drawing\">" + svg + "</div>\n"
                        + Html.element(
                                "p",
                                "small",
                                "Seen from the side. Each pipe has its true length and rise; which way its level run goes is yours to"
                                        + " choose, so the runs are folded left and right here. Levels are above the floor.")
                        + new ElevationPart(measures).legend(sheet.design()));
    }

    /** C1, C2 … for the cold legs, F for the coil in the fire, H1, H2 … for the hot ones: the order of the drawing's pipes. */
    static List<String> marks(Design design) {
        List<String> marks = new ArrayList<>();
        for (int i = 1; i <= design.coldLegs().size(); i++) {
            marks.add("C" + i);
        }
        marks.add("F");
        for (int i = 1; i <= design.hotLegs().size(); i++) {
            marks.add("H" + i);
        }
        return marks;
    }

    private String legend(Design design) {
        List<String> marks = marks(design);
        List<List<String>> rows = new ArrayList<>();
        for (Leg leg : design.coldLegs()) {
            rows.add(leg(marks.get(rows.size()), leg));
        }
        rows.add(coil(marks.get(rows.size()), design.coil()));
        for (Leg leg : design.hotLegs()) {
            rows.add(leg(marks.get(rows.size()), leg));
        }
        return Html.table("legend", List.of("mark", "pipe", "tube", "length", "rise", "slope", "lagging"), rows);
    }

    private List<String> leg(String mark, Leg leg) {
        return row(
                List.of(mark, leg.name(), leg.tube()),
                leg.lengthM(),
                leg.riseM(),
                List.of(slope(leg.levelRunM(), leg.riseM(), measures), lagging(leg)));
    }

    private List<String> coil(String mark, Coil coil) {
        return row(
                List.of(mark, "coil", coil.tube()),
                coil.lengthM(),
                coil.riseM(),
                List.of(slope(coil), "bare, in the fire"));
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
