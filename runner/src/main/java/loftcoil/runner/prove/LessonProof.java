package loftcoil.runner.prove;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What running one lesson found.
 *
 * @param lessonId name of the lesson
 * @param snippets how many snippets ran
 * @param charts how many charts they drew
 * @param exercises how many exercises were checked
 * @param checks how many numbers were compared, over all seeds
 * @param values every number that was computed, by where it stands and for which seed; in the order of the lesson
 * @param faults what is wrong, one line each; empty where all holds
 * @param millis wall-clock time it took
 */
public record LessonProof(
        String lessonId,
        int snippets,
        int charts,
        int exercises,
        int checks,
        Map<String, Double> values,
        List<String> faults,
        long millis) {

    /** Keeps its own copies. */
    public LessonProof {
        values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
        faults = List.copyOf(faults);
    }

    /** The result on one line. */
    public String line() {
        String found = faults.isEmpty() ? "all hold" : faults.size() + (faults.size() == 1 ? " fault" : " faults");
        return "%-28s %2d snippets, %2d plots, %2d exercises, %3d numbers compared: %s (%.1f s)"
                .formatted(lessonId, snippets, charts, exercises, checks, found, millis / 1000.0);
    }
}
