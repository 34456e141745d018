package loftcoil.runner.handout;

import loftcoil.engine.design.Changes;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.Example;
import loftcoil.engine.study.ProgressListener;
import loftcoil.runner.lesson.Drag;
import loftcoil.runner.lesson.Lesson;
import loftcoil.runner.lesson.Step;
import loftcoil.runner.session.Outcome;
import loftcoil.runner.session.Session;

/** Runs the snippets of a lesson in their order, each slider where it starts. */
final class LessonRuns {

    private final Session session;
    private final int snippets;
    private final ProgressListener listener;
    private int done;
    private final Design design = Example.orchardBothy();

    /**
     * Runs them in a session.
     *
     * @param listener told after each snippet
     */
    LessonRuns(Session session, Lesson lesson, ProgressListener listener) {
        this.session = session;
        this.snippets = (int)
                lesson.steps().stream().filter(Step.Snippet.class::isInstance).count();
        this.listener = listener;
    }

    /** What came of a snippet. */
    Outcome run(Step.Snippet snippet) {
        snippet.drag()
                .map(this::start)
                .ifPresent(drag -> session.bind("double", drag.variable(), Double.toString(drag.start())));
        Outcome outcome = session.run(snippet.id(), snippet.source());
        listener.done(++done, snippets);
        return outcome;
    }

    /** The slider where it starts for this design. */
    Drag start(Drag drag) {
        return drag.own(path -> Changes.current(design, path));
    }
}
