package loftcoil.engine.build;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import loftcoil.engine.design.Coil;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.Leg;
import loftcoil.engine.design.Tap;
import loftcoil.engine.pipe.Tube;
import loftcoil.engine.pipe.TubeTable;
import loftcoil.engine.words.MeasuredText;

/**
 * A run of tube from port to port as runs joined by fittings, so that it can be cut. A design says how many fittings a leg has, not
 * where: here they are spread evenly. On the cold side the last one of a leg stands at its far end, on the hot side the first one at
 * its near end, which is where such legs turn; in the coil and in the pipe to a tap none stands at an end.
 */
final class PipeChain {

    /**
     * A place along a run where something joins two tubes.
     *
     * @param key key of the fitting table, or {@code coupling} or {@code reducer}
     * @param words what it is called
     * @param tube the tube of the run it belongs to; blank where that is the one that ends there
     */
    record Joint(String key, MeasuredText words, String tube) {}

    /** Tube from joint to joint, measured from middle to middle. */
    record Stretch(String mark, String leg, Tube tube, double centreM, Joint from, Joint to) {}

    private enum Where {
        LAST_AT_THE_END,
        INSIDE,
        FIRST_AT_THE_START
    }

    private record Run(String mark, String name, Tube tube, double lengthM, List<String> fittings, Where where) {}

    /** What parts the pipes at the end of a trunk. */
    static final String BRANCH = "tee-branch";

    /** What joins two runs of different tube that meet without a fitting of their own. */
    static final String REDUCER = "reducer";

    private static final String PORT = "entrance";

    private PipeChain() {}

    /** The loop: cold port, cold legs, coil, hot legs, return port. */
    static List<Stretch> loop(Design design) {
        List<Run> runs = new ArrayList<>();
        legs("C", "coldLegs", design.coldLegs(), Where.LAST_AT_THE_END, runs);
        Coil coil = design.coil();
        Tube tube = TubeTable.require("coil.tube", coil.tube());
        runs.add(new Run(
                "F",
                CutMaker.SENTENCES.say("cuts.coil").metric(),
                tube,
                coil.lengthM(),
                fittings(coil.fittings()),
                Where.INSIDE));
        legs("H", "hotLegs", design.hotLegs(), Where.FIRST_AT_THE_START, runs);
        return stretches(runs, said(PORT, "cuts.cold-port"), said(PORT, "cuts.return-port"));
    }

    /** The pipes to the taps, each a chain of its own: the trunk if there is one, then a tap's from its end or from the tank. */
    static List<List<Stretch>> taps(Design design) {
        List<List<Stretch>> chains = new ArrayList<>();
        design.trunk().ifPresent(trunk -> {
            String name = CutMaker.SENTENCES.say("cuts.trunk").metric();
            Tube tube = TubeTable.require("trunk.tube", trunk.tube());
            Run run = new Run("T0", name, tube, trunk.lengthM(), fittings(trunk.fittings()), Where.INSIDE);
            chains.add(stretches(List.of(run), said(PORT, "cuts.draw-port"), joint(BRANCH)));
        });
        int number = 1;
        for (Tap tap : design.taps()) {
            chains.add(tap(tap, number, design.onTrunk(tap)));
            number++;
        }
        return chains;
    }

    private static List<Stretch> tap(Tap tap, int number, boolean onTrunk) {
        Tube tube = TubeTable.require("taps.tube", tap.tube());
        List<String> inside = fittings(tap.fittings());
        if (onTrunk && !inside.remove(BRANCH)) {
            inside.remove("tee-run");
        }
        Run run = new Run("T" + number, tap.name(), tube, tap.lengthM(), inside, Where.INSIDE);
        Joint start = onTrunk ? joint(BRANCH) : said(PORT, "cuts.draw-port");
        return stretches(List.of(run), start, said("exit", "cuts.tap"));
    }

    /** Tees at the end of the trunk, of its tube: one fewer than the taps on it. */
    static int tees(Design design) {
        return (int) Math.max(0, design.taps().stream().filter(design::onTrunk).count() - 1);
    }

    private static void legs(String letter, String path, List<Leg> legs, Where where, List<Run> runs) {
        int number = 1;
        for (Leg leg : legs) {
            Tube tube = TubeTable.require(path + ".tube", leg.tube());
            runs.add(new Run(letter + number, leg.name(), tube, leg.lengthM(), fittings(leg.fittings()), where));
            number++;
        }
    }

    private static List<String> fittings(Map<String, Integer> counts) {
        List<String> keys = new ArrayList<>();
        counts.forEach((key, count) -> {
            // A port of the tank is no piece of pipework.
            if (!PORT.equals(key) && !"exit".equals(key)) {
                for (int i = 0; i < count; i++) {
                    keys.add(key);
                }
            }
        });
        return keys;
    }

    private static List<Stretch> stretches(List<Run> runs, Joint start, Joint end) {
        List<Stretch> all = new ArrayList<>();
        Joint from = start;
        for (int i = 0; i < runs.size(); i++) {
            Run run = runs.get(i);
            boolean last = i + 1 == runs.size();
            from = walk(run, from, last ? end : between(run, runs.get(i + 1)), all);
        }
        return all;
    }

    /** What joins two runs that meet without one of their own fittings. */
    private static Joint between(Run run, Run next) {
        if (next.where() == Where.FIRST_AT_THE_START && !next.fittings().isEmpty()) {
            Joint bend = joint(next.fittings().get(0));
            return new Joint(bend.key(), bend.words(), next.tube().name());
        }
        return run.tube().outerM() == next.tube().outerM() ? said("coupling", "cuts.bend-or-coupling") : joint(REDUCER);
    }

    /** Cuts one run into stretches. @return the joint at its end */
    private static Joint walk(Run run, Joint start, Joint end, List<Stretch> all) {
        List<String> fittings = run.fittings();
        int inside = fittings.size();
        int first = 0;
        Joint last = end;
        if (run.where() == Where.LAST_AT_THE_END && inside > 0) {
            last = joint(fittings.get(inside - 1));
            inside--;
        } else if (run.where() == Where.FIRST_AT_THE_START && inside > 0) {
            first = 1;
            inside--;
        }
        double eachM = run.lengthM() / (inside + 1);
        Joint from = start;
        for (int i = 0; i <= inside; i++) {
            Joint to = i == inside ? last : joint(fittings.get(first + i));
            all.add(new Stretch(run.mark() + "-" + (i + 1), run.name(), run.tube(), eachM, from, to));
            from = to;
        }
        return last;
    }

    /** A fitting, called what the table of take-offs calls it. */
    static Joint joint(String key) {
        return new Joint(key, MeasuredText.of(new MeasuredText.Name(TakeOffs.words(key))), "");
    }

    private static Joint said(String key, String code) {
        return new Joint(key, CutMaker.SENTENCES.say(code), "");
    }
}
