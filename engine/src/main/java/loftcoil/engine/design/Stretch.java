package loftcoil.engine.design;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import loftcoil.engine.fault.Allowed;
import loftcoil.engine.fault.RefusedException;

/** Changes the legs of one side so that its ends move: which leg gives way is always the one a builder would lengthen. */
final class Stretch {

    /** Level runs that can be asked for. */
    static final Allowed RUN = new Allowed(0, 60, "m");

    private static final double CLOSE_M = 1e-4;

    private Stretch() {}

    /** The legs with the one of the largest rise or fall ending this much higher, its level run kept. */
    static List<Leg> longestRise(List<Leg> legs, double upM) {
        return changed(legs, Comparator.comparingDouble(leg -> Math.abs(leg.riseM())), upM, true);
    }

    /** The legs with the one of the longest level run this much longer, its rise kept. */
    static List<Leg> levelRun(List<Leg> legs, double addedM) {
        return changed(legs, Comparator.comparingDouble(Leg::levelRunM), addedM, false);
    }

    /** The design with another tank, its legs led to the ports of that. */
    static Design toTank(Design design, Tank tank) {
        Tank old = design.tank();
        return design.with(
                tank,
                design.coil(),
                longestRise(design.coldLegs(), old.coldPortLevelM() - tank.coldPortLevelM()),
                longestRise(design.hotLegs(), tank.returnPortLevelM() - old.returnPortLevelM()));
    }

    /** The design with another coil, its legs led to the ends of that. */
    static Design toCoil(Design design, Coil coil) {
        Coil old = design.coil();
        return design.with(
                design.tank(),
                coil,
                longestRise(design.coldLegs(), coil.inletM() - old.inletM()),
                longestRise(design.hotLegs(), old.outletM() - coil.outletM()));
    }

    /** Whether it is warmer round the first cold leg than round the first hot one while the fire burns. */
    static boolean coldBesideFlue(Design design) {
        Design usual = Outdoors.at(design, Outdoors.usualC(design));
        return usual.coldLegs().get(0).aroundC() > usual.hotLegs().get(0).aroundC();
    }

    /** The first cold and the first hot leg in each other's place: warmth and nights change, pipes stay as they are. */
    static Design placesChanged(Design design) {
        Leg cold = design.coldLegs().get(0);
        Leg hot = design.hotLegs().get(0);
        List<Leg> coldLegs = new ArrayList<>(design.coldLegs());
        List<Leg> hotLegs = new ArrayList<>(design.hotLegs());
        coldLegs.set(0, placed(cold, hot));
        hotLegs.set(0, placed(hot, cold));
        return design.withLegs(coldLegs, hotLegs);
    }

    private static Leg placed(Leg leg, Leg where) {
        Leg warm = LegFields.TABLE.with(leg, LegFields.AROUND, where.aroundC());
        Leg cooled = LegFields.TABLE.with(warm, LegFields.AROUND_FIRE_OUT, where.aroundFireOutC());
        return LegFields.TABLE.with(cooled, LegFields.OUTDOORS, where.outdoors());
    }

    /** Level run of all legs of a side, m. */
    static double runM(List<Leg> legs) {
        return legs.stream().mapToDouble(Leg::levelRunM).sum();
    }

    /**
     * The legs of a side with this level run together; the leg with most of it gives or takes.
     *
     * @throws RefusedException where the other legs alone have more
     */
    static List<Leg> toRun(String path, List<Leg> legs, double runM) {
        double most = legs.stream().mapToDouble(Leg::levelRunM).max().orElse(0);
        double others = runM(legs) - most;
        new Allowed(others - CLOSE_M, RUN.high(), "m").require(path, runM);
        return levelRun(legs, Math.max(others, runM) - others - most);
    }

    private static List<Leg> changed(List<Leg> legs, Comparator<Leg> by, double byM, boolean rise) {
        if (legs.isEmpty() || byM == 0) {
            return legs;
        }
        int most = IntStream.range(0, legs.size())
                .boxed()
                .max((one, other) -> by.compare(legs.get(one), legs.get(other)))
                .orElse(0);
        List<Leg> changed = new ArrayList<>(legs);
        Leg leg = legs.get(most);
        changed.set(most, rise ? leg.withRiseM(leg.riseM() + byM) : leg.withLevelRunM(leg.levelRunM() + byM));
        return changed;
    }
}
