package loftcoil.engine.build;

import java.util.List;
import java.util.Locale;
import loftcoil.engine.words.MeasuredText;

/**
 * What to look after.
 *
 * @param tasks tasks, the most frequent first
 */
public record Upkeep(List<Task> tasks) {

    /** Keeps a copy of the tasks. */
    public Upkeep {
        tasks = List.copyOf(tasks);
    }

    /** How often. */
    public enum When {
        /** Before each fire. */
        EACH_FIRE("Before each fire"),
        /** Once a week in use. */
        WEEKLY("Every week that it is used"),
        /** Once a month in use. */
        MONTHLY("Every month"),
        /** Once a year. */
        YEARLY("Every year"),
        /** Before the place is left, or frost comes. */
        BEFORE_LEAVING("Before frost, or before you leave it"),
        /** After it stood unused. */
        COMING_BACK("When you come back");

        private final String label;

        When(String label) {
            this.label = label;
        }

        /** Its code, such as {@code each-fire}. */
        public String code() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }

        /** Its heading. */
        public String label() {
            return label;
        }
    }

    /**
     * A task.
     *
     * @param when how often
     * @param what what to do
     * @param why what happens otherwise
     */
    public record Task(When when, MeasuredText what, MeasuredText why) {}

    /** The tasks of one time. */
    public List<Task> of(When when) {
        return tasks.stream().filter(task -> task.when() == when).toList();
    }
}
