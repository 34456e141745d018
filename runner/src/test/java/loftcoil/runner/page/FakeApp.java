package loftcoil.runner.page;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CountDownLatch;
import loftcoil.engine.build.BuildSheet;
import loftcoil.engine.clear.Clears;
import loftcoil.engine.design.Example;
import loftcoil.engine.words.Units;
import loftcoil.runner.progress.AnswerState;
import loftcoil.runner.progress.FolderException;
import loftcoil.runner.progress.LessonProgress.Recall;
import loftcoil.runner.show.ConductWords;
import loftcoil.runner.show.DesignsApp;
import loftcoil.runner.show.LearnerApp;
import loftcoil.runner.show.MendView;
import loftcoil.runner.show.RebuildApp;
import loftcoil.runner.show.Refresh;
import loftcoil.runner.show.SurveyApp;
import loftcoil.runner.show.UnknownNameException;
import loftcoil.runner.show.View;
import org.jspecify.annotations.Nullable;

/** A bench with nothing behind it, for tests of the page alone. It remembers what it was asked. */
final class FakeApp implements LearnerApp {

    final List<String> calls = java.util.Collections.synchronizedList(new ArrayList<>());
    private final Map<String, String> sources = new ConcurrentHashMap<>();
    /** What each run waits for. */
    volatile CountDownLatch held = new CountDownLatch(0);

    /** How long a run says it took. */
    volatile long millis = 12;

    private final Map<String, View.Reply> replies = new ConcurrentHashMap<>();
    private volatile CountDownLatch running = new CountDownLatch(0);
    volatile @Nullable String full;
    volatile @Nullable Throwable fault;
    private volatile Units units = Units.METRIC;
    private volatile String tankBaseM = "2.20";

    @Override
    public View.Course course() {
        int right = (int) replies.values().stream()
                .filter(reply -> reply.state() == AnswerState.RIGHT)
                .count();
        return new View.Course(
                List.of(
                        new View.LessonLine(FakeCourse.FIRST, "Warm water is lighter", 25, right, 3, Recall.OPEN),
                        new View.LessonLine(
                                FakeCourse.SECOND, "Why the tank must sit above the coil", 25, 0, 1, Recall.OPEN),
                        new View.LessonLine(FakeCourse.THIRD, "Finding faults", 30, 0, 1, Recall.OPEN)),
                FakeCourse.FIRST,
                "/home/orchard/loftcoil",
                List.of(),
                units.code(),
                true);
    }

    @Override
    public Units units() {
        return units;
    }

    @Override
    public void choose(Units chosen) {
        calls.add("units " + chosen.code());
        units = chosen;
    }

    @Override
    public View.ConductTable conduct() {
        return ConductWords.table(units);
    }

    @Override
    public View.Lesson lesson(String id) {
        if (id.equals(FakeCourse.FIRST)) {
            List<View.Step> steps =
                    FakeCourse.first().stream().map(this::withWork).toList();
            return new View.Lesson(id, "Warm water is lighter", 25, steps, "", FakeCourse.SECOND, "");
        }
        if (id.equals(FakeCourse.SECOND)) {
            String source = sources.getOrDefault("flow-against-height", FakeCourse.HEIGHT);
            return new View.Lesson(
                    id,
                    "Why the tank must sit above the coil",
                    25,
                    FakeCourse.second(source, tankBaseM),
                    FakeCourse.FIRST,
                    "",
                    "");
        }
        if (id.equals(FakeCourse.THIRD)) {
            List<View.Step> steps =
                    FakeCourse.third().stream().map(this::withWork).toList();
            return new View.Lesson(id, "Finding faults", 30, steps, FakeCourse.SECOND, "", "");
        }
        throw new UnknownNameException("There is no lesson named " + id + ".");
    }

    private View.Step withWork(View.Step step) {
        if (step instanceof View.Snippet each) {
            return new View.Snippet(
                    each.id(), sources.getOrDefault(each.id(), each.source()), each.original(), false, each.drag());
        }
        if (step instanceof View.Question each) {
            return new View.Question(
                    each.id(),
                    each.asked(),
                    each.form(),
                    each.label(),
                    each.markdown(),
                    each.unit(),
                    each.options(),
                    each.starter(),
                    each.current(),
                    Optional.ofNullable(replies.get(each.id())),
                    each.lines());
        }
        return step;
    }

    @Override
    public List<View.Found> search(String sought) {
        return sought.contains("nothing")
                ? List.of()
                : List.of(new View.Found(
                        "question", FakeCourse.FIRST, "push", "Warm water", "the push of two legs", "Two legs are"));
    }

    @Override
    public List<View.Picture> coarse(String lessonId, String stepId, String source, Map<String, Double> dragged) {
        calls.add("coarse " + stepId + " " + dragged);
        return List.of(FakeDrawn.chart("Flow against tank height", dragged.getOrDefault("tankBaseM", 2.0)));
    }

    @Override
    public void ahead(
            String lessonId, String stepId, String source, Map<String, Double> dragged, Map<String, Double> stands) {
        calls.add("ahead " + stepId + " " + dragged + " stands " + stands);
    }

    @Override
    public View.Run run(String lesson, String step, String source, Map<String, Double> dragged) {
        calls.add("run " + step + " " + dragged);
        if (fault instanceof Error error) {
            throw error;
        }
        if (fault instanceof RuntimeException failure) {
            throw failure;
        }
        sources.put(step, source);
        waitFor(held);
        if (source.contains("while (true)")) {
            waitForStop();
            return run(View.RunState.STOPPED, "You stopped it.", "", List.of(), List.of());
        }
        if (source.contains("oops")) {
            return run(
                    View.RunState.PROBLEMS,
                    "",
                    "",
                    List.of(new View.Problem(2, 5, "There is no oops here.", "cannot find symbol")),
                    List.of());
        }
        double base = dragged.getOrDefault("tankBaseM", 2.0);
        String title = step.equals("density-curve") ? "What a litre of water weighs" : "Flow against tank height";
        return run(
                View.RunState.DONE,
                "",
                "a litre at 10 °C weighs 999.7 g\n",
                List.of(),
                List.of(FakeDrawn.chart(title, base)));
    }

    private View.Run run(
            View.RunState state, String words, String printed, List<View.Problem> problems, List<View.Picture> charts) {
        boolean done = state == View.RunState.DONE;
        return new View.Run(
                state,
                words,
                printed,
                done ? "999.7" : "",
                done ? "double" : "",
                problems,
                charts,
                done ? List.of("How much lighter: you guessed 10 g, it is 16.5 g") : List.of(),
                millis);
    }

    private void waitForStop() {
        running = new CountDownLatch(1);
        waitFor(running);
    }

    private static void waitFor(CountDownLatch opening) {
        try {
            opening.await();
        } catch (InterruptedException ended) {
            Thread.currentThread().interrupt();
        }
    }

    @Override
    public Optional<String> unsaved() {
        return Optional.ofNullable(full);
    }

    @Override
    public void save() {
        calls.add("save");
        if (full != null) {
            throw new FolderException(FolderException.Why.FULL, Path.of("/home/orchard/loftcoil"), "its disk is full");
        }
    }

    @Override
    public void keep(String lesson, String step, String source) {
        calls.add("keep " + step);
        sources.put(step, source);
    }

    @Override
    public View.Snippet putBack(String lesson, String step) {
        sources.remove(step);
        return (View.Snippet) lesson(lesson).steps().stream()
                .filter(each -> each.id().equals(step))
                .findFirst()
                .orElseThrow();
    }

    @Override
    public View.Reply answer(String lesson, String step, String text) {
        calls.add("answer " + step + " " + text);
        View.Reply before = replies.get(step);
        View.Reply reply =
                switch (step) {
                    case "litre" ->
                        new View.Reply(
                                text, AnswerState.NOTED, "Noted. Now run it.", "", new View.Counted(0, 3), "", "");
                    case "tank-height" -> decided(text);
                    default -> judged(text, before == null ? 0 : before.tries().wrong());
                };
        replies.put(step, reply);
        return reply;
    }

    private View.Reply decided(String text) {
        tankBaseM = text.replaceAll("[^0-9.]", "");
        return new View.Reply(
                tankBaseM + " m",
                AnswerState.DECIDED,
                "It is in your design.",
                "",
                new View.Counted(0, 0),
                "",
                "",
                Optional.of(new View.Stands(tankBaseM + " m", design().safety(), Optional.of(effect()))));
    }

    private static View.Reply judged(String text, int tries) {
        if (text.startsWith("tank.baseM = 2")) {
            return new View.Reply(
                    text,
                    AnswerState.RIGHT,
                    "It works.",
                    "- **Yes:** The loop circulates.",
                    new View.Counted(tries, 0),
                    "Raise it.",
                    "common practice");
        }
        if (text.startsWith("176") || text.equals("Up on the right") || text.contains("Water.")) {
            return new View.Reply(
                    text,
                    AnswerState.RIGHT,
                    "Right, 0.2 % off.",
                    "",
                    new View.Counted(tries, 0),
                    "",
                    "IAPWS SR6-08(2011), equation 1");
        }
        String worked = tries >= 2 ? "992.2 − 983.2 = 9.0 kg/m³; times 9.81 m/s² and 2.0 m is **176.6 Pa**." : "";
        return new View.Reply(
                text,
                AnswerState.WRONG,
                "Not yet.",
                "Look at the *difference* of the two densities.",
                new View.Counted(tries + 1, Math.max(0, 2 - tries)),
                worked,
                "IAPWS SR6-08(2011), equation 1");
    }

    @Override
    public MendView mend(String lesson, String step, String moved) {
        calls.add("mend " + step + " " + moved);
        return FakeMend.view(moved);
    }

    @Override
    public List<View.Suggestion> complete(String lesson, String step, String source, int cursor) {
        int from = cursor;
        while (from > 0 && Character.isJavaIdentifierPart(source.charAt(from - 1))) {
            from--;
        }
        String begun = source.substring(from, cursor);
        int start = from;
        return List.of("densityKgPerM3(", "expansionPerK(", "prandtl(").stream()
                .filter(name -> name.startsWith(begun))
                .map(name -> new View.Suggestion(name, start, "what it is"))
                .toList();
    }

    @Override
    public View.Words words() {
        return new View.Words(List.of(
                new View.Term("bore", "the inside diameter of a pipe.", FakeCourse.THIRD, "Choosing the pipe"),
                new View.Term("cold leg", "the pipe *down* to the coil.", FakeCourse.SECOND, "Why the tank sits high"),
                new View.Term("drive", "what pushes the water.", FakeCourse.FIRST, "Warm water is lighter")));
    }

    @Override
    public void stop() {
        calls.add("stop");
        running.countDown();
    }

    @Override
    public View.Design design() {
        return new View.Design(
                "Orchard bothy",
                FakeDrawn.loop(tankBaseM),
                FakeDrawn.loop(tankBaseM),
                List.of(
                        new View.Figure("Flow", "1.31 L/min"), new View.Figure("Coil inlet", "40.0 °C"),
                        new View.Figure("Coil outlet", "72.6 °C"), new View.Figure("Tank base", tankBaseM + " m")),
                "It circulates, the right way round.",
                safety("The year is not judged yet."));
    }

    @Override
    public Optional<View.Picture> tried(String lessonId, String stepId, double value) {
        calls.add("tried " + value);
        return Optional.of(FakeDrawn.loop(Double.toString(value)));
    }

    @Override
    public List<String> plainDrawing(int columns, int rows) {
        return List.of("#~#");
    }

    @Override
    public View.Safety safety() {
        calls.add("safety");
        return safety("");
    }

    private static View.Safety safety(String open) {
        return new View.Safety(
                "warning",
                "Caution",
                "",
                List.of(new View.Finding("LC-HOT-PIPE", "warning", "Caution", "The riser is bare and comes to 72 °C.")),
                1,
                "",
                open);
    }

    @Override
    public BuildSheet build() {
        return BuildSheet.of(Example.orchardBothy());
    }

    @Override
    public View.Effect effect() {
        return new View.Effect(1, "", List.of(), List.of(), List.of(), List.of(), List.of(), "");
    }

    @Override
    public DesignsApp designs() {
        throw new UnknownNameException("There are no designs here.");
    }

    @Override
    public SurveyApp survey() {
        throw new UnknownNameException("There is no survey here.");
    }

    @Override
    public View.Building building() {
        calls.add("building");
        return new View.Building(View.BuildState.WORKING, 40, "Working out the year.");
    }

    @Override
    public View.Building startBuild() {
        calls.add("startBuild");
        return building();
    }

    @Override
    public View.Building stopBuild() {
        calls.add("stopBuild");
        return new View.Building(View.BuildState.STOPPED, 0, "Stopped.");
    }

    @Override
    public BuildSheet halfBuild() {
        return build();
    }

    @Override
    public View.Clears clears() {
        calls.add("clears");
        return new View.Clears(View.ClearState.NONE, 0, 0, List.of(), "");
    }

    @Override
    public View.Clears searchClears() {
        calls.add("searchClears");
        return clears();
    }

    @Override
    public View.Clears stopClears() {
        calls.add("stopClears");
        return new View.Clears(View.ClearState.STOPPED, 3, 12, List.of(), "");
    }

    @Override
    public View.Followed follow(String danger, int way) {
        calls.add("follow " + danger + " " + way);
        return new View.Followed("It is in your design now.", effect());
    }

    @Override
    public Optional<Clears> foundClears() {
        return Optional.empty();
    }

    @Override
    public RebuildApp rebuild() {
        throw new UnknownNameException("Nothing is rebuilt here.");
    }

    @Override
    public Refresh refresh() {
        throw new UnknownNameException("There is no refresher here.");
    }

    @Override
    public void close() {
        stop();
    }
}
