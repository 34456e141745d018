package loftcoil.runner.show;

import loftcoil.engine.design.Changes;
import loftcoil.engine.design.Design;
import loftcoil.runner.lesson.Drag;

/** Lets a slider start where the learner's own design is. */
final class Drags {

    private Drags() {}

    /**
     * The drag for this learner.
     *
     * @param drag as the lesson has it
     * @param design the learner's design
     */
    static Drag own(Drag drag, Design design) {
        return drag.decided().isEmpty()
                ? drag
                : drag.startingAt(Double.parseDouble(Changes.current(design, drag.decided())));
    }
}
