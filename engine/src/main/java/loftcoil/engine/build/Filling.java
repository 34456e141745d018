package loftcoil.engine.build;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import loftcoil.engine.words.MeasuredText;

/**
 * Filling, leak test and first fire, in the order in which they are done: water before fire, always.
 *
 * @param steps the steps
 */
public record Filling(List<Step> steps) {

    /** Keeps a copy of the steps. */
    public Filling {
        steps = List.copyOf(steps);
    }

    /** What a step belongs to; they are done in this order. */
    public enum Stage {
        /** Before any water. */
        BEFORE("Before the water"),
        /** Filling with cold water. */
        FILL("Fill"),
        /** Cold leak test. */
        LEAK_TEST("Look for leaks, cold"),
        /** Getting the air out. */
        BLEED("Get the air out"),
        /** The first fire. */
        FIRST_FIRE("First fire"),
        /** After it. */
        AFTER("After the first fire");

        private final String label;

        Stage(String label) {
            this.label = label;
        }

        /** Its code, such as {@code first-fire}. */
        public String code() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }

        /** Its heading. */
        public String label() {
            return label;
        }
    }

    /**
     * A step.
     *
     * @param stage what it belongs to
     * @param what what to do
     * @param caution what can hurt here; empty where nothing more than usual
     */
    public record Step(Stage stage, MeasuredText what, Optional<MeasuredText> caution) {}
}
