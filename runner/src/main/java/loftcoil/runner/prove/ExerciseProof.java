package loftcoil.runner.prove;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import loftcoil.engine.design.Changes;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.Example;
import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.words.Numeral;
import loftcoil.runner.check.Checker;
import loftcoil.runner.check.Verdict;
import loftcoil.runner.check.Worked;
import loftcoil.runner.course.Course;
import loftcoil.runner.exercise.Code;
import loftcoil.runner.exercise.Decision;
import loftcoil.runner.exercise.Exercise;
import loftcoil.runner.exercise.KnownMistake;
import loftcoil.runner.exercise.Mend;
import loftcoil.runner.exercise.Quantity;
import loftcoil.runner.exercise.Reckoned;
import loftcoil.runner.exercise.Reckoning;
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
        if (!(step instanceof Step.Question question) || question.asked() == Step.Asked.AGAIN) {
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
            reckoned(reckoned);
        }
    }

    private void reckoned(Reckoned exercise) {
        Map<Long, Reckoned> bySeed = new LinkedHashMap<>();
        for (long seed : exercise.about().vary().isEmpty() ? seeds.subList(0, 1) : seeds) {
            bySeed.put(seed, exercise.with(Variation.numbers(exercise, seed)));
        }
        Stream<Reckoned> published = exercise.published().map(fixed -> exercise.with(fixed.with())).stream();
        Map<String, Double> known = reckoner.together(Stream.concat(
                        bySeed.values().stream().flatMap(ExerciseProof::everyJava),
                        published.map(fixed -> fixed.reference().java()))
                .toList());
        published(exercise, known);
        bySeed.forEach((seed, varied) -> worked(varied, seed, known));
    }

    private void mend(Mend mend) {
        MendProof proof = MendProof.of(mend, reckoning(Map.of()));
        compared += proof.compared();
        faults.addAll(proof.faults());
    }

    private void worked(Reckoned exercise, long seed, Map<String, Double> known) {
        String where = exercise.path() + " with seed " + seed;
        Reference reference = exercise.reference();
        Tolerance tolerance = exercise.tolerance();
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
        if (exercise instanceof Code code) {
            lines(code, where, value.get(), known);
        }
        if (exercise instanceof Quantity quantity) {
            rounded(quantity, where, "the reference", value.get(), known);
            Worked.sumJava(quantity)
                    .flatMap(sum -> number(where + ", worked solution", sum, known))
                    .ifPresent(sum -> rounded(quantity, where, "the worked solution", sum, known));
        }
        try {
            Worked.markdown(exercise, reckoning(known));
        } catch (ReckoningException unread) {
            faults.add(where + ", worked solution: " + unread.getMessage());
        }
        for (KnownMistake mistake : exercise.mistakes()) {
            number(where + ", mistake '" + mistake.because() + "'", mistake.java(), known)
                    .filter(wrong -> tolerance.allows(value.get(), wrong))
                    .ifPresent(wrong -> faults.add(where + ": the mistake '" + mistake.because() + "' gives " + wrong
                            + ", which would pass as right"));
        }
    }

    /** Of the form without typing the right lines give the reference, and no single wrong line does. */
    private void lines(Code code, String where, double value, Map<String, Double> known) {
        if (code.lines().isEmpty()) {
            return;
        }
        number(where + ", right lines", code.rightLines(), known)
                .filter(answer -> !code.tolerance().allows(value, answer))
                .ifPresent(answer ->
                        faults.add(where + ": the right lines give " + answer + ", the reference is " + value));
        Map<String, Double> wrong = reckoner.together(code.wrongLines());
        for (String java : code.wrongLines()) {
            compared++;
            try {
                if (code.tolerance().allows(value, wrong.containsKey(java) ? wrong.get(java) : reckoner.number(java))) {
                    faults.add(where + ": a wrong line passes as right:\n" + java);
                }
            } catch (RefusedException refused) {
                // A wrong line may well give no number at all.
            }
        }
    }

    /** A right value rounded to two and three digits, as a learner writes it, is right or is asked for a digit more. */
    private void rounded(Quantity quantity, String where, String what, double value, Map<String, Double> known) {
        RoundingMode way =
                switch (quantity.tolerance().safe()) {
                    case BELOW -> RoundingMode.FLOOR;
                    case ABOVE -> RoundingMode.CEILING;
                    case NEITHER -> RoundingMode.HALF_UP;
                };
        for (int digits = 2; digits <= 3; digits++) {
            compared++;
            String number = BigDecimal.valueOf(value)
                    .round(new MathContext(digits, way))
                    .stripTrailingZeros()
                    .toPlainString();
            String answer = Numeral.withUnit(number, quantity.reference().unit());
            Verdict verdict = Checker.compare(quantity, answer, reckoning(known));
            if (!(verdict instanceof Verdict.Right || verdict instanceof Verdict.More)) {
                faults.add(where + ": " + what + ", " + value + ", rounded to " + digits + " digits, “" + answer
                        + "”, is neither right nor asked for more: " + verdict);
            }
        }
    }

    /** Computes what is not known yet. */
    private Reckoning reckoning(Map<String, Double> known) {
        return new Reckoning() {
            @Override
            public double number(String java) {
                try {
                    return known.containsKey(java) ? known.get(java) : reckoner.number(java);
                } catch (RefusedException refused) {
                    throw new ReckoningException(refused.getMessage());
                }
            }

            @Override
            public Map<String, Double> together(Collection<String> java) {
                Map<String, Double> values = new LinkedHashMap<>(known);
                values.keySet().retainAll(java);
                values.putAll(reckoner.together(
                        java.stream().filter(one -> !known.containsKey(one)).toList()));
                return values;
            }
        };
    }

    private static Stream<String> everyJava(Reckoned exercise) {
        Stream<String> right = Stream.of(
                exercise.reference().java(), exercise.about().solution().java(), rightLines(exercise));
        return Stream.concat(right, exercise.mistakes().stream().map(KnownMistake::java))
                .filter(java -> !java.isEmpty());
    }

    private static String rightLines(Reckoned exercise) {
        return exercise instanceof Code code && !code.lines().isEmpty() ? code.rightLines() : "";
    }

    private void published(Reckoned exercise, Map<String, Double> known) {
        exercise.published().ifPresent(fixed -> {
            Reference reference = exercise.with(fixed.with()).reference();
            String where = exercise.path() + ", published case";
            number(where, reference.java(), known)
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
