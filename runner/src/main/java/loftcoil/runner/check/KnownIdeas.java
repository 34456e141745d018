package loftcoil.runner.check;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoublePredicate;
import loftcoil.runner.exercise.KnownMistake;
import loftcoil.runner.exercise.Reckoning;
import loftcoil.runner.exercise.Tolerance;

/** The known wrong ideas of an exercise with the numbers they lead to. One is told only where no other fits as well. */
final class KnownIdeas {

    /** A wrong idea, the number it leads to, and how far an answer may be from that. */
    record Idea(String name, double value, Tolerance window, String hint) {}

    /** With fewer digits than this leaves, a number shows no idea. */
    private static final double MOST_ROUNDING = 0.05;

    private final List<Idea> ideas;

    private KnownIdeas(List<Idea> ideas) {
        this.ideas = ideas;
    }

    /**
     * The ideas an author has foreseen.
     *
     * @param reference the right value; an absolute tolerance shrinks with an idea that is smaller than it
     */
    static KnownIdeas of(List<KnownMistake> mistakes, Tolerance tolerance, double reference, Reckoning reckoning) {
        Map<String, Double> values =
                reckoning.together(mistakes.stream().map(KnownMistake::java).toList());
        return new KnownIdeas(mistakes.stream()
                .map(mistake -> {
                    double value = number(mistake.java(), values, reckoning);
                    double smaller = reference == 0 ? 1 : Math.min(1, Math.abs(value / reference));
                    Tolerance window = Double.isFinite(smaller) ? tolerance.times(smaller) : tolerance;
                    return new Idea(mistake.because(), value, window, mistake.hint());
                })
                .toList());
    }

    static KnownIdeas of(List<Idea> ideas) {
        return new KnownIdeas(List.copyOf(ideas));
    }

    /** A value that was reckoned with others, or else by itself. */
    static double number(String java, Map<String, Double> values, Reckoning reckoning) {
        Double value = values.get(java);
        return value == null ? reckoning.number(java) : value;
    }

    /** Whether any idea leads to a number that is rounded to the answer. */
    boolean anyRounds(DoublePredicate rounds) {
        return ideas.stream().anyMatch(idea -> rounds.test(idea.value()));
    }

    /**
     * The one idea an answer shows: the only one whose number is rounded to it, or else the only one near it.
     *
     * @param answer in the wanted unit
     * @param rounds whether a number in the wanted unit is rounded to the answer
     * @return nothing where none fits, or several do as well
     */
    Optional<Idea> shown(double answer, DoublePredicate rounds) {
        List<Idea> near = ideas.stream()
                .filter(idea -> idea.window().allows(idea.value(), answer)
                        || (rounds.test(idea.value())
                                && Math.abs(answer - idea.value()) <= MOST_ROUNDING * Math.abs(idea.value())))
                .toList();
        List<Idea> exact =
                near.stream().filter(idea -> rounds.test(idea.value())).toList();
        List<Idea> best = exact.isEmpty() ? near : exact;
        boolean alike = best.stream().map(Idea::name).distinct().count() == 1;
        return alike ? Optional.of(best.get(0)) : Optional.empty();
    }
}
