package loftcoil.engine.caution;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import loftcoil.engine.design.Coil;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.Leg;
import loftcoil.engine.words.Measure;
import loftcoil.engine.words.MeasureKind;

/**
 * Air that gathers where the loop goes up and down again or the coil falls, water drawn up above the free surface, and what leaves it
 * open which way the water sets off: a level coil, a level run beside a coil that hardly rises. Judged by the drawing alone, whatever a
 * march says of the start: bubbles push harder than the first warm water does.
 */
final class AirInLoop implements CautionRule {

    /** A fall smaller than a bubble needs, m. */
    private static final double LEAST_M = 0.001;

    /** A coil that rises less counts as level, m. */
    private static final double LEVEL_COIL_M = 0.01;

    /** A pipe flatter than this counts as level, m of rise a metre: what a spirit level does not tell. */
    private static final double LEVEL_SLOPE = 0.005;

    /** A pipe flatter than this may hold air once it has sagged, m of rise a metre. */
    private static final double LEAST_SLOPE = 0.02;
    /** Less than a level shows; a run laid at just the least is not told that it is under it. */
    private static final double SLOPE_HAIR = 5e-5;

    /** Rise of the coil from which a level run beside it does no harm, m. */
    private static final double SURE_RISE_M = 0.3;

    @Override
    public void look(CautionFacts facts, Findings findings) {
        if (facts.tankBelowCoil()) {
            return;
        }
        double aboveM = facts.circuit().aboveWaterlineM();
        if (aboveM > 0) {
            findings.caution(CautionKind.SIPHON, "above", Measure.metres(aboveM));
            return;
        }
        Design design = facts.design();
        coil(design.coil(), findings);
        falling(design.hotLegs(), -1, "hot-leg", findings);
        falling(design.coldLegs(), 1, "cold-leg", findings);
        levelRun(design, findings);
        flattest(design, findings);
    }

    private static void coil(Coil coil, Findings findings) {
        if (-coil.riseM() > LEAST_M) {
            findings.cautionAs(CautionKind.AIR, "coil", "fall", Measure.metres(-coil.riseM()));
        } else if (coil.riseM() < LEVEL_COIL_M) {
            findings.cautionAs(CautionKind.AIR, "coil-level");
        }
    }

    private static void falling(List<Leg> legs, int wrongWay, String which, Findings findings) {
        for (Leg leg : legs) {
            double byM = wrongWay * leg.riseM();
            if (byM > LEAST_M) {
                findings.cautionAs(CautionKind.AIR, which, "leg", leg.name(), "by", Measure.metres(byM));
            }
        }
    }

    private static void levelRun(Design design, Findings findings) {
        double riseM = design.coil().riseM();
        if (riseM < LEVEL_COIL_M || riseM >= SURE_RISE_M) {
            return;
        }
        design.hotLegs().stream()
                .filter(leg -> leg.riseM() >= -LEAST_M && slope(leg) < LEVEL_SLOPE)
                .findFirst()
                .ifPresent(leg -> findings.cautionAs(
                        CautionKind.AIR,
                        "hot-level",
                        "leg",
                        leg.name(),
                        "rise",
                        Measure.metres(riseM),
                        "least",
                        Measure.metres(SURE_RISE_M)));
    }

    private static void flattest(Design design, Findings findings) {
        Stream.concat(design.hotLegs().stream(), design.coldLegs().stream())
                .filter(leg -> slope(leg) < LEAST_SLOPE - SLOPE_HAIR)
                .min(Comparator.comparingDouble(AirInLoop::slope))
                .ifPresent(leg -> findings.caution(
                        CautionKind.FLAT,
                        "leg",
                        leg.name(),
                        "slope",
                        slopeOf(slope(leg)),
                        "least",
                        slopeOf(LEAST_SLOPE)));
    }

    private static Measure slopeOf(double share) {
        return new Measure(1000 * share, MeasureKind.SLOPE_MM_PER_M);
    }

    private static double slope(Leg leg) {
        return Math.abs(leg.riseM()) / leg.lengthM();
    }
}
