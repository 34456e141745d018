package loftcoil.runner.prove;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import loftcoil.engine.design.Design;
import loftcoil.engine.fault.RefusedException;
import loftcoil.runner.check.MendCheck;
import loftcoil.runner.check.MendTrial;
import loftcoil.runner.exercise.About;
import loftcoil.runner.exercise.Lever;
import loftcoil.runner.exercise.Mend;
import loftcoil.runner.exercise.Reckoning;
import loftcoil.runner.exercise.ReckoningException;

/**
 * Proves a faulty system: it is faulty, its cure cures it, no mistake does, every part of the cure is needed, and every lever can
 * be moved over all its way and changes something.
 */
final class MendProof {

    private final Mend mend;
    private final MendCheck check;
    private final List<String> faults = new ArrayList<>();
    private int compared;

    private MendProof(Mend mend, Reckoning reckoning) {
        this.mend = mend;
        this.check = new MendCheck(mend, reckoning);
    }

    /**
     * Proves one.
     *
     * @param mend the exercise
     * @param reckoning computes its Java
     */
    static MendProof of(Mend mend, Reckoning reckoning) {
        MendProof proof = new MendProof(mend, reckoning);
        try {
            proof.run();
        } catch (ReckoningException unable) {
            proof.fault("its Java gives no value: " + unable.getMessage());
        }
        return proof;
    }

    private void run() {
        boolean sound = mend.mended().isEmpty();
        if (mends(Map.of()) != sound) {
            fault(
                    sound
                            ? "nothing is wrong, yet it does not do: " + missing()
                            : "the system as found does all that is wanted");
        }
        if (!sound && !mends(mend.mended())) {
            fault("the cure " + MendTrial.text(mend.mended()) + " does not do: " + missing());
        }
        for (String change : mend.mended().keySet()) {
            Map<String, String> without = new LinkedHashMap<>(mend.mended());
            without.remove(change);
            if (!without.isEmpty() && mends(without)) {
                fault("the cure works without " + change);
            }
        }
        mend.mistakes().stream()
                .filter(mistake -> !sound)
                .filter(mistake -> mends(mistake.changes()))
                .forEach(mistake -> fault("the mistake '" + mistake.because() + "' mends it"));
        mend.levers().forEach(this::lever);
        readings();
    }

    private String missing() {
        List<String> missing = new ArrayList<>();
        try {
            List<Boolean> met = check.met(MendTrial.design(mend, mend.mended()));
            for (int i = 0; i < met.size(); i++) {
                if (!met.get(i)) {
                    missing.add(mend.wanted().get(i).say());
                }
            }
        } catch (RefusedException refused) {
            missing.add(refused.getMessage());
        }
        return String.join("; ", missing);
    }

    private boolean mends(Map<String, String> moved) {
        compared++;
        try {
            return !check.met(MendTrial.design(mend, moved)).contains(false);
        } catch (RefusedException refused) {
            fault(MendTrial.text(moved) + " cannot be built: " + refused.getMessage());
            return false;
        }
    }

    private void lever(Lever lever) {
        Design found = mend.faulty().design();
        for (String value : ends(lever)) {
            compared++;
            try {
                Map<String, String> moved = MendTrial.moved(mend, lever.change() + " = " + value);
                if (!moved.isEmpty() && MendTrial.design(mend, moved).equals(found)) {
                    fault("moving " + lever.change() + " to " + value + " changes nothing");
                }
            } catch (RefusedException refused) {
                fault(lever.change() + " at " + value + " cannot be built: " + refused.getMessage());
            }
        }
    }

    private static List<String> ends(Lever lever) {
        return lever.span()
                .map(span -> List.of(Double.toString(span.from()), Double.toString(last(span))))
                .orElse(lever.options());
    }

    private static double last(About.Span span) {
        return span.from() + (span.stops() - 1) * span.by();
    }

    private void readings() {
        List<Design> systems = List.of(mend.faulty().design(), MendTrial.design(mend, mend.mended()));
        for (Design system : systems) {
            List<Double> values = check.readings(mend.readings(), system);
            for (int i = 0; i < values.size(); i++) {
                compared++;
                if (!Double.isFinite(values.get(i))) {
                    fault("the reading '" + mend.readings().get(i).label() + "' is no number");
                }
            }
        }
    }

    private void fault(String words) {
        faults.add(mend.path() + ": " + words.replace('\n', ' '));
    }

    int compared() {
        return compared;
    }

    List<String> faults() {
        return faults;
    }
}
