package loftcoil.engine.design;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import loftcoil.engine.fault.Allowed;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.words.Numeral;

/**
 * How steep the pipes of a loop are. A cold leg slopes the right way where it falls on its way to the coil, a hot leg where it
 * rises on its way to the tank; either lets air out to the tank.
 */
final class Slopes {

    /** Slopes that can be asked for. */
    static final Allowed RANGE = new Allowed(-1000, 1000, "mm/m");

    /** A pipe with less level run than this counts as upright, m. */
    private static final double UPRIGHT_M = 0.01;

    private static final double MM_PER_M = 1000;

    /** Rounding of the sums, mm/m. */
    private static final double SAME = 1e-3;

    private Slopes() {}

    /** Slope of the flattest leg, mm/m; the top of the range where all stand upright or nearly so. */
    static double leastMmPerM(Design design) {
        return DoubleStream.concat(slopes(design.coldLegs(), -1), slopes(design.hotLegs(), 1))
                .min()
                .orElse(RANGE.high());
    }

    /** Slope of the flattest hot leg, mm/m; the top of the range where all stand upright or nearly so. */
    static double leastHotMmPerM(Design design) {
        return slopes(design.hotLegs(), 1).min().orElse(RANGE.high());
    }

    /** No hot leg flatter than a slope; the one with the largest rise makes up for the others, and none gets flatter. */
    static Design withHot(Design design, double slopeMmPerM) {
        Design changed =
                design.withLegs(design.coldLegs(), side(design.hotLegs(), 1, new Goal(slopeMmPerM, slopeMmPerM)));
        if (leastHotMmPerM(changed) < slopeMmPerM - 1) {
            throw refused("hotLegs.slopeMmPerM", slopeMmPerM);
        }
        return changed;
    }

    static Design with(Design design, double slopeMmPerM) {
        double leastMmPerM = leastMmPerM(design);
        boolean lower = slopeMmPerM < leastMmPerM;
        double belowMmPerM = lower ? leastMmPerM + SAME : slopeMmPerM;
        boolean steepest = lower && leastMmPerM >= RANGE.high();
        if (steepest && slopeMmPerM >= RANGE.high()) {
            return design.checked();
        }
        Design changed = design.withLegs(
                side(design.coldLegs(), -1, new Goal(belowMmPerM, slopeMmPerM)),
                side(design.hotLegs(), 1, new Goal(belowMmPerM, slopeMmPerM)));
        if (Math.abs(leastMmPerM(changed) - slopeMmPerM) > 1) {
            throw refused("loop.slopeMmPerM", slopeMmPerM);
        }
        return changed;
    }

    /** What legs are to be changed and to what slope, mm/m. */
    private record Goal(double belowMmPerM, double toMmPerM) {}

    private static List<Leg> side(List<Leg> legs, int upward, Goal goal) {
        int giver = IntStream.range(0, legs.size())
                .boxed()
                .max(Comparator.comparingDouble(i -> Math.abs(legs.get(i).riseM())))
                .orElse(0);
        List<Leg> changed = new ArrayList<>(legs);
        double gainedM = 0;
        for (int i = 0; i < legs.size(); i++) {
            Leg leg = legs.get(i);
            if (i != giver && leg.levelRunM() >= UPRIGHT_M && slope(leg, upward) < goal.belowMmPerM()) {
                double riseM = upward * goal.toMmPerM() / MM_PER_M * leg.levelRunM();
                changed.set(i, leg.withRiseM(riseM));
                gainedM += riseM - leg.riseM();
            }
        }
        Leg upright = legs.get(giver);
        changed.set(giver, upright.withRiseM(upright.riseM() - gainedM));
        return changed;
    }

    private static DoubleStream slopes(List<Leg> legs, int upward) {
        return legs.stream()
                .filter(leg -> leg.levelRunM() >= UPRIGHT_M)
                .mapToDouble(leg -> slope(leg, upward))
                .map(slope -> Math.max(RANGE.low(), Math.min(RANGE.high(), slope)));
    }

    private static double slope(Leg leg, int upward) {
        return upward * leg.riseM() / leg.levelRunM() * MM_PER_M;
    }

    private static RefusedException refused(String change, double slopeMmPerM) {
        return new RefusedException(List.of(new Fault(
                change,
                Numeral.typedTo(0, slopeMmPerM) + " mm/m",
                "a slope at which every leg still meets tank and coil",
                "the leg with the largest rise of each side has to make up for the others, and cannot here")));
    }
}
