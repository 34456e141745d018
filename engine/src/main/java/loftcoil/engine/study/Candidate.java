package loftcoil.engine.study;

import java.util.Optional;
import loftcoil.engine.design.Design;
import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.loop.SteadyFlow;

/**
 * One loop that was looked at.
 *
 * @param design the design with it
 * @param tube tube of every leg and the coil
 * @param baseM level of the tank's base above the floor, m
 * @param laggingMm lagging of the legs, mm
 * @param cost what copper, lagging and height cost, in the unit of the prices
 * @param flowKgPerS flow, fire lit, kg/s; 0 where none
 * @param boilMarginK least distance from boiling, K; 0 where it boils or stands still
 * @param nightLossW heat the loop takes from the tank, fire out, W
 * @param lacks how far it is from the aims: 0 where it meets them all, else the sum of the shares by which each is missed
 */
public record Candidate(
        Design design,
        String tube,
        double baseM,
        double laggingMm,
        double cost,
        double flowKgPerS,
        double boilMarginK,
        double nightLossW,
        double lacks) {

    /** Whether it meets all aims. */
    public boolean meetsAims() {
        return lacks == 0;
    }

    /** Whether it is to be preferred to another: nearer to the aims, or as near and cheaper. */
    boolean beats(Candidate other) {
        return lacks != other.lacks ? lacks < other.lacks : cost < other.cost;
    }

    /** Looks at a loop; empty where it cannot be built. */
    static Optional<Candidate> look(Wanted wanted, String tube, double baseM, double laggingMm) {
        try {
            Design design =
                    wanted.design().withTankBaseM(baseM).withLoopTube(tube).withLoopLaggingMm(laggingMm);
            return Optional.of(judged(wanted, design, new Choice(tube, baseM, laggingMm)));
        } catch (RefusedException cannotBe) {
            // At this height the legs do not close or the tank is at its boiling point: no candidate.
            return Optional.empty();
        }
    }

    private record Choice(String tube, double baseM, double laggingMm) {}

    private static Candidate judged(Wanted wanted, Design design, Choice choice) {
        Aims aims = wanted.aims();
        Optional<SteadyFlow> lit = design.circuit(aims.tankC()).search().forward();
        double flow = lit.map(SteadyFlow::flowKgPerS).orElse(0.0);
        double margin = lit.map(steady -> steady.boilMargin().marginK()).orElse(0.0);
        double night = NightLoss.watts(design, aims.tankC());
        double lacks = missed(aims.leastFlowKgPerS(), flow)
                + missed(aims.leastBoilMarginK(), margin)
                + missed(night, aims.mostNightLossW())
                + (lit.isPresent() ? 0 : 1);
        return new Candidate(
                design,
                choice.tube(),
                choice.baseM(),
                choice.laggingMm(),
                LoopCost.of(design, wanted),
                flow,
                margin,
                night,
                lacks);
    }

    /** The share by which something is less than it should be; 0 where it is not. */
    private static double missed(double should, double is) {
        return should <= is ? 0 : (should - is) / should;
    }
}
