package loftcoil.engine.design;

import java.util.List;
import java.util.Optional;
import loftcoil.engine.fault.Allowed;

/**
 * One thing that can be changed by name, such as a learner decides in a lesson.
 *
 * @param name how it is named in an exercise, such as {@code tank.baseM}
 * @param label what it is, in words
 * @param unit unit of its value; empty for a plain number or a name
 * @param range allowed numbers; empty where a name is chosen
 * @param options the names to choose from; empty where a number is given
 */
public record Change(String name, String label, String unit, Optional<Allowed> range, List<String> options) {

    /** Keeps a copy of the options. */
    public Change {
        options = List.copyOf(options);
    }

    /** What is allowed, in words. */
    public String allowed() {
        String words = options.isEmpty() ? "text" : "one of " + String.join(", ", options);
        return range.map(Allowed::toString).orElse(words);
    }
}
