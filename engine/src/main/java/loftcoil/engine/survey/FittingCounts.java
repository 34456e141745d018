package loftcoil.engine.survey;

import java.util.ArrayList;
import java.util.List;
import loftcoil.engine.design.CoilHeating;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.Tap;
import loftcoil.engine.design.Trunk;
import loftcoil.engine.pipe.Fitting;
import loftcoil.engine.pipe.FittingTable;
import loftcoil.engine.pipe.Tube;
import loftcoil.engine.pipe.TubeTable;
import loftcoil.engine.water.Water;
import loftcoil.engine.words.Measure;
import loftcoil.engine.words.MeasureKind;
import loftcoil.engine.words.MeasuredText;

/**
 * What each fitting counts, as the length of straight tube that holds the water back as much: help for who counts or chooses fittings. A
 * rule of thumb at one usual flow; the figures of a design take each fitting at its own.
 */
public final class FittingCounts {

    /** A usual flow to one tap, kg/s: six litres a minute; common practice, no source. */
    private static final double TAP_KG_PER_S = 0.1;

    private static final double LOOP_C = 50;
    private static final double TAP_C = 45;

    private static final List<String> IN_LOOP =
            List.of("elbow90", "bend90", "elbow45", "tee-run", "tee-branch", "union", "entrance", "exit");

    /** Turned off by somebody in the loop they make a sealed boiler of it; to the taps they belong. */
    private static final List<String> TO_TAPS =
            List.of("elbow90", "bend90", "elbow45", "tee-run", "tee-branch", "union", "ball", "gate", "check");

    private FittingCounts() {}

    /** In the loop, whose water is slow, in the tube of the first hot leg: what is counted, and then a line for each fitting. */
    public static List<MeasuredText> inLoop(Design design) {
        Tube tube = TubeTable.tube(design.hotLegs().get(0).tube());
        List<MeasuredText> counts = new ArrayList<>();
        counts.add(head("loop", tube, CoilHeating.USUAL_FLOW_KG_PER_S));
        counts.addAll(rows(IN_LOOP, tube, CoilHeating.USUAL_FLOW_KG_PER_S, LOOP_C));
        counts.add(SurveyWords.say("fitting.valve"));
        return List.copyOf(counts);
    }

    /** On the way to the taps, in the tube they share or else in that of the first; empty where there are no taps. */
    public static List<MeasuredText> toTaps(Design design) {
        return design.trunk()
                .map(Trunk::tube)
                .or(() -> design.taps().stream().map(Tap::tube).findFirst())
                .map(TubeTable::tube)
                .map(tube -> {
                    List<MeasuredText> counts = new ArrayList<>();
                    counts.add(head("taps", tube, TAP_KG_PER_S));
                    counts.addAll(rows(TO_TAPS, tube, TAP_KG_PER_S, TAP_C));
                    return List.copyOf(counts);
                })
                .orElse(List.of());
    }

    private static MeasuredText head(String where, Tube tube, double flowKgPerS) {
        return SurveyWords.say(
                "fitting." + where,
                "tube",
                tube.name(),
                "flow",
                Measure.rounded(flowKgPerS * 60, MeasureKind.FLOW_L_PER_MIN, 1));
    }

    private static List<MeasuredText> rows(List<String> keys, Tube tube, double flowKgPerS, double tempC) {
        double reynolds = 4 * flowKgPerS / (Math.PI * tube.boreM() * Water.viscosityPaS(tempC));
        return keys.stream()
                .map(key -> FittingTable.require("fittings", key))
                .map(fitting -> row(fitting, fitting.asStraightM(reynolds, tube.boreM())))
                .toList();
    }

    /** To a tenth of a metre or an inch: handbooks differ by a factor of two. */
    private static MeasuredText row(Fitting fitting, double straightM) {
        return SurveyWords.say(
                "fitting.row",
                "fitting",
                fitting.words(),
                "length",
                new Measure(straightM, MeasureKind.LENGTH_M).finer(straightM < 0.1 ? -2 : -1));
    }
}
