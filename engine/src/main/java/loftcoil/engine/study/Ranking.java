package loftcoil.engine.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import loftcoil.engine.design.Design;
import loftcoil.engine.fault.RefusedException;

/**
 * Which change helps most: each practical step is done alone to the design, and the figure is reckoned again.
 *
 * @param figure the figure
 * @param now its value for the design as it is; empty where it has none
 * @param effects what each step does, the most helpful first
 * @param untried steps that cannot be done to this design, each with why
 */
public record Ranking(Figure figure, OptionalDouble now, List<Effect> effects, List<String> untried) {

    /** Keeps copies of the lists. */
    public Ranking {
        effects = List.copyOf(effects);
        untried = List.copyOf(untried);
    }

    /**
     * What one step does.
     *
     * @param words what is done
     * @param value the figure after it
     * @param better by how much it is better than now, in the figure's unit; negative where worse; where the design had no such
     *     figure before, the figure itself
     */
    public record Effect(String words, double value, double better) {}

    /**
     * Ranks all practical steps.
     *
     * @param design a checked design
     * @param figure what is to get better
     * @param watch is told of each step, and may stop
     */
    public static Outcome<Ranking> of(Design design, Figure figure, ProgressListener watch) {
        return of(design, figure, PracticalStep.all(), watch);
    }

    /** Ranks some steps; see {@link #of(Design, Figure, Watch)}. */
    public static Outcome<Ranking> of(Design design, Figure figure, List<PracticalStep> steps, ProgressListener watch) {
        OptionalDouble now = figure.of(design);
        List<Effect> effects = new ArrayList<>();
        List<String> untried = new ArrayList<>();
        int done = 0;
        while (done < steps.size() && !watch.cancelled()) {
            tried(design, figure, now, steps.get(done)).ifPresentOrElse(effects::add, noting(untried, steps.get(done)));
            watch.done(++done, steps.size());
        }
        effects.sort(Comparator.comparingDouble(Effect::better).reversed());
        Ranking ranking = new Ranking(figure, now, effects, untried);
        return done == steps.size()
                ? new Outcome.Finished<>(ranking)
                : new Outcome.Cancelled<>(ranking, done, steps.size());
    }

    private static Runnable noting(List<String> untried, PracticalStep step) {
        return () -> untried.add(step.words());
    }

    private static Optional<Effect> tried(Design design, Figure figure, OptionalDouble now, PracticalStep step) {
        try {
            return step.done().apply(design).flatMap(changed -> effect(figure, now, step, figure.of(changed)));
        } catch (RefusedException cannotBe) {
            // The step leads out of what can be built, such as a tank above the highest level allowed.
            return Optional.empty();
        }
    }

    private static Optional<Effect> effect(
            Figure figure, OptionalDouble now, PracticalStep step, OptionalDouble after) {
        if (after.isEmpty()) {
            return Optional.empty();
        }
        double more = after.getAsDouble() - now.orElse(0);
        return Optional.of(new Effect(step.words(), after.getAsDouble(), figure.moreIsBetter() ? more : -more));
    }
}
