package loftcoil.runner.prove;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import loftcoil.engine.design.Changes;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.Example;
import loftcoil.engine.fault.RefusedException;
import loftcoil.runner.course.Course;
import loftcoil.runner.exercise.Decision;
import loftcoil.runner.exercise.Exercise;
import loftcoil.runner.exercise.KnownMistake;
import loftcoil.runner.exercise.Mend;
import loftcoil.runner.exercise.Reckoned;
import loftcoil.runner.exercise.ReckoningException;
import loftcoil.runner.exercise.Reference;
import loftcoil.runner.exercise.Tolerance;
import loftcoil.runner.exercise.Variation;
import loftcoil.runner.lesson.Step;
import loftcoil.runner.session.Reckoner;
import loftcoil.runner.session.Session;

/** Compares the numbers of the exercises of one lesson. */
final class ExerciseProof {

    private final Reckoner reckoner;
    private final List<Long> seeds;
    private final List<String> faults = new ArrayList<>();
    private final Map<String, Double> values = new LinkedHashMap<>();
    private int checked;
    private int compared;

    ExerciseProof(Session session, List<Long> seeds) {
        this.reckoner = new Reckoner(session);
        this.seeds = seeds;
    }

    void take(Course course, Step step) {
        if (!(step instanceof Step.Question question)) {
            return;
        }
        checked++;
        Exercise exercise = course.exercise(question.exercise());
        if (exercise instanceof Decision decision) {
            decision(decision);
            return;
        }
        if (exercise instanceof Mend mend) {
            mend(mend);
            return;
        }
        if (exercise instanceof Reckoned reckoned) {
            published(reckoned);
            for (long seed : exercise.about().vary().isEmpty() ? seeds.subList(0, 1) : seeds) {
                worked(reckoned.with(Variation.numbers(reckoned, seed)), seed);
            }
        }
    }

    private void mend(Mend mend) {
        MendProof proof = MendProof.of(mend, java -> {
            try {
                return reckoner.number(java);
            } catch (RefusedException refused) {
                throw new ReckoningException(refused.getMessage());
            }
        });
        compared += proof.compared();
        faults.addAll(proof.faults());
    }

    private void worked(Reckoned exercise, long seed) {
        String where = exercise.path() + " with seed " + seed;
        Reference reference = exercise.reference();
        Tolerance tolerance = exercise.tolerance();
        Map<String, Double> known = reckoner.together(everyJava(exercise));
        Optional<Double> value = number(where + ", reference", reference.java(), known);
        if (value.isEmpty()) {
            return;
        }
        String solution = exercise.about().solution().java();
        if (solution.isEmpty()) {
            faults.add(where + ": the worked solution has no Java to check");
        } else {
            number(where + ", worked solution", solution, known)
                    .filter(answer -> !tolerance.allows(value.get(), answer))
                    .ifPresent(answer -> faults.add(where + ": the worked solution gives " + answer
                            + ", the reference is " + value.get() + " " + reference.unit()));
        }
        for (KnownMistake mistake : exercise.mistakes()) {
            number(where + ", mistake '" + mistake.because() + "'", mistake.java(), known)
                    .filter(wrong -> tolerance.allows(value.get(), wrong))
                    .ifPresent(wrong -> faults.add(where + ": the mistake '" + mistake.because() + "' gives " + wrong
                            + ", which would pass as right"));
        }
    }

    private static List<String> everyJava(Reckoned exercise) {
        return Stream.concat(
                        Stream.of(
                                exercise.reference().java(),
                                exercise.about().solution().java()),
                        exercise.mistakes().stream().map(KnownMistake::java))
                .filter(java -> !java.isEmpty())
                .toList();
    }

    private void published(Reckoned exercise) {
        exercise.published().ifPresent(fixed -> {
            Reference reference = exercise.with(fixed.with()).reference();
            String where = exercise.path() + ", published case";
            number(where, reference.java(), Map.of())
                    .filter(value -> !fixed.tolerance().allows(fixed.value(), value))
                    .ifPresent(value ->
                            faults.add(where + ": the reference gives " + value + ", published is " + fixed.value()));
        });
    }

    private void decision(Decision decision) {
        Design example = Example.orchardBothy();
        String where = decision.path();
        if (!Changes.names().contains(decision.change())) {
            faults.add(
                    where + ": no change '" + decision.change() + "'; allowed: " + String.join(", ", Changes.names()));
            return;
        }
        List<String> tried = decision.options().isEmpty()
                ? List.of(Changes.current(example, decision.change()))
                : decision.options();
        for (String option : tried) {
            compared++;
            try {
                Changes.apply(example, decision.change(), option);
            } catch (RefusedException refused) {
                faults.add(where + ": the example design refuses '" + option + "': " + refused.getMessage());
            }
        }
    }

    private Optional<Double> number(String where, String java, Map<String, Double> known) {
        compared++;
        try {
            double value = known.containsKey(java) ? known.get(java) : reckoner.number(java);
            values.put(where, value);
            return Optional.of(value);
        } catch (RefusedException refused) {
            faults.add(where + ": " + refused.getMessage().replace('\n', ' '));
            return Optional.empty();
        }
    }

    int checked() {
        return checked;
    }

    int compared() {
        return compared;
    }

    Map<String, Double> values() {
        return values;
    }

    List<String> faults() {
        return faults;
    }
}
