package loftcoil.runner.show;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import loftcoil.engine.design.Changes;
import loftcoil.engine.design.Design;
import loftcoil.runner.lesson.Drag;
import loftcoil.runner.lesson.Lesson;
import loftcoil.runner.lesson.Step;
import loftcoil.runner.session.Outcome;
import loftcoil.runner.session.Session;
import loftcoil.runner.session.Suggestion;

/**
 * Runs the snippets of the lesson that is open. A lesson's snippets share their names; opening another lesson begins with
 * none.
 */
final class SnippetRunner {

    private final Session session;
    private final LearnerStore store;
    private final Set<String> here = new HashSet<>();
    private String lessonId = "";
    private final BoundDesign design = new BoundDesign();

    /** Brings back the value a slider stands at, where its snippet was last run ahead with another. */
    private Optional<Ahead> ahead = Optional.empty();

    private record Ahead(Lesson lesson, Step.Snippet snippet, String source, Map<String, Double> stands) {}

    SnippetRunner(Session session, LearnerStore store) {
        this.session = session;
        this.store = store;
    }

    /**
     * What came of it, with a word on what had to run first.
     *
     * @param outcome what came of the snippet
     * @param before what is said first; empty where nothing
     * @param first true where the snippet had not run since the lesson was opened
     */
    record Ran(Outcome outcome, String before, boolean first) {}

    /**
     * Runs a snippet, after those above it that have not run since the lesson was opened.
     *
     * @param lesson the lesson
     * @param snippet the snippet
     * @param source its text as it is now
     * @param dragged values by variable; the drag's start is taken where none is given
     */
    Ran run(Lesson lesson, Step.Snippet snippet, String source, Map<String, Double> dragged) {
        // Before it waits for whatever runs: who stops now stops this too.
        return run(lesson, snippet, source, dragged, session.stops());
    }

    private synchronized Ran run(
            Lesson lesson, Step.Snippet snippet, String source, Map<String, Double> dragged, long since) {
        open(lesson);
        settle(snippet);
        String before = runAbove(lesson, snippet, since);
        snippet.drag().ifPresent(drag -> bind(drag, dragged));
        Outcome outcome = session.run(snippet.id(), source, since);
        return new Ran(outcome, before, here.add(snippet.id()));
    }

    /**
     * Runs a snippet with a value that its slider may be dragged to. What it leaves is put right before any other snippet runs.
     *
     * @param lesson the lesson
     * @param snippet one that has run as it is
     * @param source its text as it is now
     * @param dragged value to run with
     * @param stands value its slider stands at
     */
    synchronized Outcome ahead(
            Lesson lesson,
            Step.Snippet snippet,
            String source,
            Map<String, Double> dragged,
            Map<String, Double> stands) {
        Outcome outcome = run(lesson, snippet, source, dragged).outcome();
        ahead = Optional.of(new Ahead(lesson, snippet, source, Map.copyOf(stands)));
        return outcome;
    }

    private void settle(Step.Snippet next) {
        Optional<Ahead> unsettled = ahead;
        ahead = Optional.empty();
        unsettled
                .filter(last -> last.lesson().id().equals(lessonId)
                        && !last.snippet().id().equals(next.id()))
                .ifPresent(last -> run(last.lesson(), last.snippet(), last.source(), last.stands()));
    }

    /** Makes ready for a lesson, so that its first run does not have to wait for a Java machine. */
    synchronized void open(Lesson lesson) {
        if (!lesson.id().equals(lessonId)) {
            session.forget();
            here.clear();
            design.forget();
            lessonId = lesson.id();
        }
        design.bring(session, store.design());
    }

    private String runAbove(Lesson lesson, Step.Snippet upTo, long since) {
        StringBuilder failed = new StringBuilder();
        for (Step step : lesson.before(upTo.id())) {
            if (step instanceof Step.Snippet above && here.add(above.id())) {
                above.drag().ifPresent(drag -> bind(drag, Map.of()));
                String source = store.work(lesson.id()).snippets().getOrDefault(above.id(), above.source());
                Outcome outcome = session.run(above.id(), source, since);
                if (outcome instanceof Outcome.Stopped && session.stops() != since) {
                    here.remove(above.id());
                    return "";
                }
                if (!(outcome instanceof Outcome.Done)) {
                    failed.append(failed.isEmpty() ? "" : ", ").append(above.id());
                }
            }
        }
        return failed.isEmpty() ? "" : "Java above did not run to its end: " + failed + ". ";
    }

    private void bind(Drag written, Map<String, Double> dragged) {
        Drag drag = own(written, store.design());
        double value = dragged.getOrDefault(drag.variable(), drag.start());
        double within = Math.max(drag.from(), Math.min(drag.to(), value));
        session.bind("double", drag.variable(), Double.toString(within));
    }

    /**
     * A drag that starts where the learner's own design is.
     *
     * @param drag as the lesson has it
     * @param design the learner's design
     */
    static Drag own(Drag drag, Design design) {
        return drag.own(path -> Changes.current(design, path));
    }

    /** Ways to go on typing; empty while something runs. */
    List<Suggestion> complete(String source, int cursor) {
        return session.complete(source, cursor);
    }

    /** Ends what runs now. */
    void stop() {
        session.stop();
    }

    void close() {
        session.close();
    }
}
