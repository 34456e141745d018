package loftcoil.engine.study;

import java.util.Optional;
import org.hipparchus.exception.MathIllegalStateException;
import org.hipparchus.optim.InitialGuess;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.PointValuePair;
import org.hipparchus.optim.SimpleBounds;
import org.hipparchus.optim.SimplePointChecker;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.nonlinear.scalar.ObjectiveFunction;
import org.hipparchus.optim.nonlinear.scalar.noderiv.CMAESOptimizer;
import org.hipparchus.random.Well19937c;

/**
 * The best height and lagging for one tube, by Hipparchus's CMA-ES: it needs no slope, and the edge between what meets the aims and
 * what does not has none. What lacks something is worth a great cost plus what it lacks, so the search first comes to the aims and then
 * gets cheap. Always the same seed: the same question gets the same answer. The best loop ever looked at is kept, whatever the search
 * ends on, and then rounded up to whole centimetres and millimetres where that still meets the aims.
 */
final class TubeSearch {

    /** Loops looked at for one tube at most. */
    static final int MOST_LOOKS = 300;

    private static final long SEED = 1;
    private static final double DEAR = 1e6;
    private static final double CANNOT_BE = 1e3;
    private static final int POPULATION = 10;
    private static final double STEP = 0.25;
    private static final double NEAR = 1e-4;

    private final Wanted wanted;
    private final String tube;
    private final ProgressListener watch;
    private final int looksBefore;
    private final int looksInAll;
    private int looks;
    private Optional<Candidate> best = Optional.empty();

    TubeSearch(Wanted wanted, String tube, ProgressListener watch, int looksBefore, int looksInAll) {
        this.wanted = wanted;
        this.tube = tube;
        this.watch = watch;
        this.looksBefore = looksBefore;
        this.looksInAll = looksInAll;
    }

    /** Searches; false where it was stopped. */
    boolean run() {
        try {
            optimise();
        } catch (Stopped stopped) {
            return false;
        } catch (MathIllegalStateException looksUsedUp) {
            // Not an error: the best of the looks there were is kept.
        }
        rounded();
        watch.done(looksBefore + MOST_LOOKS, looksInAll);
        return true;
    }

    int looks() {
        return looks;
    }

    Optional<Candidate> best() {
        return best;
    }

    private void optimise() {
        CMAESOptimizer optimizer = new CMAESOptimizer(
                MOST_LOOKS,
                0,
                true,
                0,
                0,
                new Well19937c(SEED),
                false,
                new SimplePointChecker<PointValuePair>(NEAR, NEAR));
        optimizer.optimize(
                new MaxEval(MOST_LOOKS),
                new ObjectiveFunction(this::worth),
                GoalType.MINIMIZE,
                new InitialGuess(new double[] {0.8, 0.5}),
                new SimpleBounds(new double[] {0, 0}, new double[] {1, 1}),
                new CMAESOptimizer.Sigma(new double[] {STEP, STEP}),
                new CMAESOptimizer.PopulationSize(POPULATION));
    }

    /** Worth of a point of the unit square: height across, lagging up; less is better. */
    private double worth(double[] point) {
        if (watch.cancelled()) {
            throw new Stopped();
        }
        looks++;
        watch.done(looksBefore + Math.min(looks, MOST_LOOKS), looksInAll);
        Choices choices = wanted.choices();
        double baseM = choices.lowestBaseM() + point[0] * (choices.highestBaseM() - choices.lowestBaseM());
        Optional<Candidate> looked = look(baseM, point[1] * choices.mostLaggingMm());
        return looked.map(one -> one.meetsAims() ? one.cost() : DEAR * (1 + one.lacks()))
                .orElse(DEAR * CANNOT_BE);
    }

    private Optional<Candidate> look(double baseM, double laggingMm) {
        Optional<Candidate> looked = Candidate.look(wanted, tube, baseM, laggingMm);
        looked.filter(one -> best.isEmpty() || one.beats(best.get())).ifPresent(one -> best = looked);
        return looked;
    }

    /** A builder measures centimetres and buys millimetres. */
    private void rounded() {
        best.filter(Candidate::meetsAims).ifPresent(found -> {
            double baseM = Math.min(
                    Math.ceil(found.baseM() * 100) / 100, wanted.choices().highestBaseM());
            double laggingMm =
                    Math.min(Math.ceil(found.laggingMm()), wanted.choices().mostLaggingMm());
            Candidate.look(wanted, tube, baseM, laggingMm)
                    .filter(Candidate::meetsAims)
                    .ifPresent(rounded -> best = Optional.of(rounded));
        });
    }

    /** Leaves the optimiser from inside its own evaluation. */
    private static final class Stopped extends RuntimeException {
        private static final long serialVersionUID = 1L;
    }
}
