package loftcoil.runner.prove;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import loftcoil.engine.words.Numeral;
import loftcoil.runner.course.Course;
import loftcoil.runner.course.Taught;
import loftcoil.runner.exercise.Choice;
import loftcoil.runner.exercise.Exercise;
import loftcoil.runner.exercise.KnownMistake;
import loftcoil.runner.exercise.Mend;
import loftcoil.runner.exercise.Reckoned;
import loftcoil.runner.exercise.Tolerance;

/**
 * A table of every exercise as comma-separated values (IETF RFC 4180): what it needs, where that was taught, where its sum is
 * shown with other numbers, its tolerance, and the known wrong idea whose number is nearest to the right one.
 */
public final class ExerciseTable {

    private static final String HEAD =
            "lesson,exercise,kind,unit,numbers,words and where they are explained,Java names and where they stand first,"
                    + "names not seen before,shown in,shown as,tolerance,nearest wrong idea,its distance";
    private static final Pattern VALUE = Pattern.compile("(.+) with seed -?\\d+, (reference|mistake '(.*)')");

    private final Map<String, Double> references = new HashMap<>();
    private final Map<String, Map<String, Double>> ideas = new HashMap<>();

    private ExerciseTable() {}

    /**
     * The table.
     *
     * @param course all of it
     * @param proofs of its lessons; of a lesson without one no wrong idea is told
     */
    public static String of(Course course, List<LessonProof> proofs) {
        ExerciseTable table = new ExerciseTable();
        proofs.forEach(proof -> proof.values().forEach(table::take));
        return Taught.in(course).stream().map(table::row).collect(Collectors.joining("\r\n", HEAD + "\r\n", "\r\n"));
    }

    /** The first seed's values are the ones compared. */
    private void take(String where, double value) {
        Matcher named = VALUE.matcher(where);
        if (named.matches() && named.group(3) == null) {
            references.putIfAbsent(named.group(1), value);
        } else if (named.matches()) {
            ideas.computeIfAbsent(named.group(1), path -> new HashMap<>()).putIfAbsent(named.group(3), value);
        }
    }

    private String row(Taught taught) {
        Exercise exercise = taught.exercise();
        List<String> cells = new ArrayList<>();
        cells.add(taught.lessonId());
        cells.add(exercise.path());
        cells.add(exercise.form() + (exercise.before() ? ", a guess" : ""));
        cells.add(exercise instanceof Reckoned reckoned ? reckoned.reference().unit() : "");
        cells.add(String.join(" ", exercise.about().vary().keySet()));
        cells.add(whereTaught(taught.ideas()));
        cells.add(whereTaught(taught.names()));
        cells.add(String.join(" ", taught.untaught()));
        cells.add(taught.shown().map(Taught.Shown::lessonId).orElse(""));
        cells.add(taught.shown().map(Taught.Shown::words).orElse(""));
        cells.add(exercise instanceof Reckoned reckoned ? tolerance(reckoned.tolerance()) : among(exercise));
        Optional<KnownMistake> nearest = exercise instanceof Reckoned reckoned ? nearest(reckoned) : Optional.empty();
        cells.add(nearest.map(KnownMistake::because)
                .orElse(among(exercise).isEmpty() ? "" : "each has a reply of its own"));
        cells.add(nearest.map(idea -> Numeral.shown(100 * distance(exercise, idea), 2) + " %")
                .orElse(""));
        return cells.stream().map(ExerciseTable::cell).collect(Collectors.joining(","));
    }

    private static String whereTaught(Map<String, String> needed) {
        return needed.entrySet().stream()
                .map(one -> one.getKey() + " (" + one.getValue() + ")")
                .collect(Collectors.joining("; "));
    }

    private static String tolerance(Tolerance tolerance) {
        String wide = tolerance.absolute() > 0
                ? Numeral.typed(tolerance.absolute())
                : Numeral.typed(100 * tolerance.relative(), 6) + " %";
        return switch (tolerance.safe()) {
            case NEITHER -> wide;
            case BELOW -> wide + ", or rounded down";
            case ABOVE -> wide + ", or rounded up";
        };
    }

    /** Of how many a choice is made; empty where a number is asked for, or where there is no right and wrong. */
    private static String among(Exercise exercise) {
        if (exercise instanceof Choice choice) {
            return "1 of " + choice.options().size();
        }
        return exercise instanceof Mend mend ? "1 cause of " + mend.causes().size() : "";
    }

    private Optional<KnownMistake> nearest(Reckoned exercise) {
        return exercise.mistakes().stream()
                .filter(idea -> Double.isFinite(distance(exercise, idea)))
                .min((one, other) -> Double.compare(distance(exercise, one), distance(exercise, other)));
    }

    private double distance(Exercise exercise, KnownMistake idea) {
        double right = references.getOrDefault(exercise.path(), Double.NaN);
        double wrong = ideas.getOrDefault(exercise.path(), Map.of()).getOrDefault(idea.because(), Double.NaN);
        return Math.abs(wrong - right) / Math.abs(right);
    }

    private static String cell(String text) {
        return "\"" + text.replace("\"", "\"\"").replaceAll("\\s+", " ") + "\"";
    }
}
