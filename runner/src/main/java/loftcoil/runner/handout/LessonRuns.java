package loftcoil.runner.handout;

import loftcoil.engine.design.Changes;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.Example;
import loftcoil.runner.lesson.Drag;
import loftcoil.runner.lesson.Step;
import loftcoil.runner.session.Outcome;
import loftcoil.runner.session.Session;

/** Runs the snippets of a lesson in their order, each slider where it starts. */
final class LessonRuns {

    private final Session session;
    private final Design design = Example.orchardBothy();

    LessonRuns(Session session) {
        this.session = session;
    }

    /** What came of a snippet. */
    Outcome run(Step.Snippet snippet) {
        snippet.drag()
                .map(this::start)
                .ifPresent(drag -> session.bind("double", drag.variable(), Double.toString(drag.start())));
        return session.run(snippet.id(), snippet.source());
    }

    /** The slider where it starts for this design. */
    Drag start(Drag drag) {
        return drag.decided().isEmpty()
                ? drag
                : drag.startingAt(Double.parseDouble(Changes.current(design, drag.decided())));
    }
}
