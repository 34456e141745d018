package loftcoil.runner.show;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Supplier;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import loftcoil.engine.build.BuildSheet;
import loftcoil.engine.clear.Clears;
import loftcoil.engine.clear.Way;
import loftcoil.engine.design.Changes;
import loftcoil.engine.design.Design;
import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.sheet.Drawing;
import loftcoil.engine.sheet.Headings;
import loftcoil.engine.sheet.SafetyVerdict;
import loftcoil.engine.study.Comparison;
import loftcoil.engine.study.NamedValue;
import loftcoil.engine.words.Units;
import loftcoil.runner.course.Course;
import loftcoil.runner.course.Term;
import loftcoil.runner.lesson.Drag;
import loftcoil.runner.lesson.Lesson;
import loftcoil.runner.lesson.Step;
import loftcoil.runner.progress.LessonProgress;
import loftcoil.runner.progress.Progress;
import loftcoil.runner.progress.ProgressFile;
import loftcoil.runner.progress.Trail;
import loftcoil.runner.session.Outcome;
import loftcoil.runner.session.Session;
import loftcoil.runner.session.SessionSetup;
import org.jspecify.annotations.Nullable;

/** The real {@link LearnerApp}: a course, a learner's folder and running Java. */
public final class CourseApp implements LearnerApp {

    private static final Pattern NUMBER = Pattern.compile("(?<![\\w.])\\d[\\d.]*");

    private final Course course;
    private final LearnerStore store;
    private final SnippetRunner snippets;
    private final ReferenceValues reckoning;
    private final QuestionDesk questions;
    private final RefreshDesk refresh;
    private final RebuildDesk rebuild;
    private final DesignsDesk designs;
    private final SurveyDesk survey;
    private final MendDesk mends;
    private final WholeSheets sheets;
    private final ClearsDesk clears;
    private final BuildDesk builds;
    private @Nullable CourseSearch search;
    private final Warming warming = new Warming();
    private final AtomicBoolean opened = new AtomicBoolean();
    private final CoarseCharts coarse = new CoarseCharts();

    private CourseApp(
            Course course, LearnerStore store, Supplier<Session> sessions, Supplier<Session> referenceSessions) {
        this.course = course;
        this.store = store;
        this.snippets = new SnippetRunner(sessions.get(), store);
        this.reckoning = new ReferenceValues(referenceSessions, store);
        this.questions = new QuestionDesk(course, store, reckoning);
        this.refresh = new RefreshDesk(course, store, reckoning);
        this.rebuild = new RebuildDesk(store);
        this.designs = new DesignsDesk(store);
        this.survey = new SurveyDesk(store);
        this.mends = new MendDesk(course, reckoning, store::units);
        this.sheets = new WholeSheets(store);
        this.clears = new ClearsDesk(store);
        this.builds = new BuildDesk(store, sheets);
    }

    /**
     * Opens a learner's work.
     *
     * @param course what there is to learn
     * @param files the learner's folder; closed with this
     * @param setup how snippets run
     * @param newSeed the seed of a learner who starts now
     * @throws loftcoil.runner.progress.FolderException where the folder cannot be used
     * @throws loftcoil.runner.session.SessionException where this Java cannot run snippets
     */
    public static CourseApp open(Course course, ProgressFile files, SessionSetup setup, long newSeed) {
        // References end no machine and wait for nobody: a spare one would only hold memory.
        return open(course, files, () -> Session.open(setup), () -> Session.openWithoutSpare(setup), newSeed);
    }

    /**
     * Opens a learner's work with sessions from elsewhere.
     *
     * @param course what there is to learn
     * @param files the learner's folder; closed with this
     * @param sessions asked for each session that is needed; closed with this
     * @param newSeed the seed of a learner who starts now
     * @throws loftcoil.runner.progress.FolderException where the folder cannot be used
     * @throws loftcoil.runner.session.SessionException where this Java cannot run snippets
     */
    public static CourseApp open(Course course, ProgressFile files, Supplier<Session> sessions, long newSeed) {
        return open(course, files, sessions, sessions, newSeed);
    }

    private static CourseApp open(
            Course course,
            ProgressFile files,
            Supplier<Session> sessions,
            Supplier<Session> referenceSessions,
            long newSeed) {
        CourseApp bench = new CourseApp(course, new LearnerStore(files, newSeed), sessions, referenceSessions);
        bench.warming.later(bench::lookAhead);
        return bench;
    }

    @Override
    public View.Course course() {
        List<View.LessonLine> lines = course.lessons().stream().map(this::line).toList();
        return new View.Course(
                lines,
                openNow(),
                store.folder(),
                store.notices().stream().map(store.units()::said).toList(),
                store.units().code(),
                store.unitsSaid());
    }

    private View.LessonLine line(Lesson lesson) {
        LessonProgress far = LessonProgress.of(course, lesson, store.progress());
        return new View.LessonLine(
                lesson.id(), lesson.title(), lesson.minutes(), far.done(), far.counted(), far.recall());
    }

    @Override
    public View.Lesson lesson(String lessonId) {
        Lesson lesson = find(lessonId);
        store.update(progress -> progress.withLesson(lessonId));
        makeReady(lesson);
        List<String> names = course.names();
        int at = names.indexOf(lesson.id());
        return new View.Lesson(
                lesson.id(),
                lesson.title(),
                lesson.minutes(),
                lesson.steps().stream().map(step -> view(lesson, step)).toList(),
                at > 0 ? names.get(at - 1) : "",
                at + 1 < names.size() ? names.get(at + 1) : "",
                store.work(lessonId).step());
    }

    /** Reads, while a browser starts, the lesson that will be asked for and then the others for the list. Touches no learner's file. */
    private void lookAhead() {
        for (Step step : find(openNow()).steps()) {
            if (step instanceof Step.Question question) {
                course.exercise(question.exercise());
            }
        }
        course.lessons();
    }

    private String openNow() {
        String last = store.progress().lesson();
        return course.lesson(last).isPresent() ? last : course.names().get(0);
    }

    /** What the learner comes to next: Java, its plots. Whoever has just started reads first, and is not to wait for that. */
    private void makeReady(Lesson lesson) {
        if (opened.compareAndSet(false, true)) {
            warming.afterwards(Warming::chart);
            warming.afterwards(() -> snippets.open(lesson));
        } else {
            warming.later(() -> snippets.open(lesson));
        }
    }

    private View.Step view(Lesson lesson, Step step) {
        if (step instanceof Step.Prose prose) {
            return new View.Prose(prose.id(), prose.markdown());
        }
        if (step instanceof Step.Caution caution) {
            return new View.Caution(caution.id(), caution.danger(), caution.markdown());
        }
        if (step instanceof Step.Drawing drawing) {
            return new View.Drawing(
                    drawing.id(), drawing.caption(), LoopPanel.drawn(store.design(), headings(), store.units()));
        }
        if (step instanceof Step.Snippet snippet) {
            return snippetView(lesson, snippet);
        }
        return questions.view(lesson, (Step.Question) step);
    }

    private View.Snippet snippetView(Lesson lesson, Step.Snippet snippet) {
        Progress.LessonWork work = store.work(lesson.id());
        String source = work.snippets().getOrDefault(snippet.id(), snippet.source());
        return new View.Snippet(
                snippet.id(),
                source,
                snippet.source(),
                work.ran().contains(snippet.id()),
                snippet.drag().map(drag -> Slider.of(SnippetRunner.own(drag, store.design()), store.units())));
    }

    @Override
    public Optional<View.Picture> tried(String lessonId, String stepId, double value) {
        Step.Snippet snippet = find(find(lessonId), stepId, Step.Snippet.class);
        Design decided = store.design();
        return snippet.drag()
                .map(Drag::decided)
                .filter(change -> !change.isEmpty())
                .flatMap(change -> {
                    try {
                        Design design = Changes.apply(decided, change, Double.toString(value));
                        return Optional.of(LoopPanel.over(
                                "Your loop, and as tried: " + decided.name(),
                                decided,
                                design,
                                "as tried",
                                headings(),
                                store.units()));
                    } catch (RefusedException refused) {
                        return Optional.empty();
                    }
                });
    }

    /** Which way the pipes lead, where the learner took that with a compass. */
    private Headings headings() {
        return Headings.of(store.survey());
    }

    @Override
    public List<String> plainDrawing(int columns, int rows) {
        Drawing drawing = Drawing.of(store.design(), headings());
        List<String> lines = new ArrayList<>(HouseText.of(drawing, store.units()::of, columns, rows));
        lines.add("");
        lines.addAll(HouseText.plan(drawing, store.units()::of, columns, rows));
        return lines;
    }

    @Override
    public View.Run run(String lessonId, String stepId, String source, Map<String, Double> dragged) {
        Lesson lesson = find(lessonId);
        Step.Snippet snippet = find(lesson, stepId, Step.Snippet.class);
        keep(lessonId, stepId, source);
        SnippetRunner.Ran ran = snippets.run(lesson, snippet, source, dragged);
        boolean done = ran.outcome() instanceof Outcome.Done;
        if (done) {
            store.updateWork(lessonId, work -> work.withRan(stepId));
        }
        keepCoarse(lessonId, snippet, source, dragged, ran.outcome());
        // A drag reruns many times a second: what was guessed is said by the first run, and after a new guess.
        boolean again = ran.first() || dragged.isEmpty();
        // Of a changed snippet the guess was not made.
        boolean asWritten = numbersOf(source).equals(numbersOf(snippet.source()));
        List<String> predictions = done && asWritten ? questions.predictions(lesson, snippet, again) : List.of();
        return RunWords.of(ran.outcome(), ran.before(), predictions, store.units());
    }

    private void keepCoarse(
            String lessonId, Step.Snippet snippet, String source, Map<String, Double> dragged, Outcome outcome) {
        Optional<Double> value = snippet.drag().map(drag -> dragged.get(drag.variable()));
        if (value.isPresent() && outcome instanceof Outcome.Done) {
            coarse.keep(
                    new CoarseCharts.Of(lessonId, snippet.id(), source, store.design()),
                    value.get(),
                    outcome.trace().charts());
        } else if (value.isEmpty()) {
            coarse.forget();
        }
    }

    @Override
    public List<View.Picture> coarse(String lessonId, String stepId, String source, Map<String, Double> dragged) {
        Step.Snippet snippet = find(find(lessonId), stepId, Step.Snippet.class);
        CoarseCharts.Of of = new CoarseCharts.Of(lessonId, stepId, source, store.design());
        return snippet.drag().map(drag -> dragged.get(drag.variable())).stream()
                .flatMap(value -> coarse.at(of, value).stream())
                .map(order -> RunWords.picture(ChartUnits.in(store.units(), order)))
                .toList();
    }

    @Override
    public void ahead(
            String lessonId, String stepId, String source, Map<String, Double> dragged, Map<String, Double> stands) {
        Lesson lesson = find(lessonId);
        Step.Snippet snippet = find(lesson, stepId, Step.Snippet.class);
        keepCoarse(lessonId, snippet, source, dragged, snippets.ahead(lesson, snippet, source, dragged, stands));
    }

    /** The numbers in some Java, in order; remarks and texts aside. */
    private static List<String> numbersOf(String java) {
        String code = java.replaceAll("\"(?:[^\"\\\\\n]|\\\\.)*\"|//.*", "");
        return NUMBER.matcher(code).results().map(MatchResult::group).toList();
    }

    @Override
    public Optional<String> unsaved() {
        return store.unsaved().map(why -> String.valueOf(why.getMessage()));
    }

    @Override
    public void save() {
        store.save();
    }

    @Override
    public void keep(String lessonId, String stepId, String source) {
        Step.Snippet snippet = find(find(lessonId), stepId, Step.Snippet.class);
        store.updateWork(lessonId, work -> {
            Progress.LessonWork kept =
                    source.equals(snippet.source()) ? work.withoutSnippet(stepId) : work.withSnippet(stepId, source);
            return kept.withStep(stepId);
        });
    }

    @Override
    public View.Snippet putBack(String lessonId, String stepId) {
        Lesson lesson = find(lessonId);
        Step.Snippet snippet = find(lesson, stepId, Step.Snippet.class);
        store.updateWork(lessonId, work -> work.withoutSnippet(stepId));
        return snippetView(lesson, snippet);
    }

    @Override
    public View.Reply answer(String lessonId, String stepId, String text) {
        Lesson lesson = find(lessonId);
        return questions.answer(lesson, find(lesson, stepId, Step.Question.class), text);
    }

    @Override
    public MendView mend(String lessonId, String stepId, String moved) {
        Lesson lesson = find(lessonId);
        boolean found = store.work(lesson.id()).answersTo(stepId).stream()
                .anyMatch(given -> given.state().isDone());
        return mends.view(
                find(lesson, stepId, Step.Question.class), store.progress().seed(), found, moved);
    }

    @Override
    public List<View.Suggestion> complete(String lessonId, String stepId, String source, int cursor) {
        return snippets.complete(source, cursor).stream()
                .map(suggestion -> new View.Suggestion(suggestion.text(), suggestion.from(), suggestion.meaning()))
                .toList();
    }

    @Override
    public View.Words words() {
        return new View.Words(course.terms().stream().map(this::term).toList());
    }

    @Override
    public List<View.Found> search(String sought) {
        return searcher().find(sought);
    }

    /** Made when it is first asked for: most never search. */
    private synchronized CourseSearch searcher() {
        CourseSearch made = search == null ? new CourseSearch(course, questions::text) : search;
        search = made;
        return made;
    }

    private View.Term term(Term term) {
        String title = course.lesson(term.lessonId()).map(Lesson::title).orElse("");
        return new View.Term(term.name(), term.markdown(), term.lessonId(), title);
    }

    @Override
    public void stop() {
        snippets.stop();
    }

    @Override
    public View.ConductTable conduct() {
        return ConductWords.table(store.units());
    }

    @Override
    public Units units() {
        return store.units();
    }

    @Override
    public void choose(Units units) {
        store.choose(units);
    }

    /** Shows everything in those units until the end, or until the learner chooses others. */
    public void useForNow(Units units) {
        store.useForNow(units);
    }

    @Override
    public View.Design design() {
        return LoopPanel.view(store.design(), headings(), store.units());
    }

    @Override
    public View.Safety safety() {
        Design design = store.design();
        try {
            return SafetyWords.of(sheets.sheet().verdict(), sheets.sheet().design(), store.units());
        } catch (RefusedException cannotBe) {
            // A design that fits together may still have a year that cannot be, such as that of the other half of the
            // earth.
            return SafetyWords.withoutYear(SafetyVerdict.withoutYear(design), design, cannotBe, store.units());
        }
    }

    @Override
    public View.Effect effect() {
        Trail trail = store.trail();
        Design now = store.design();
        int last = trail.entries().size() - 1;
        Design before = last == 0
                ? now
                : TrailWords.design(trail.entries().get(last - 1).state()).orElse(now);
        try {
            Comparison compared = Comparison.of(sheets.sheet(before), sheets.sheet(now));
            return EffectWords.of(trail.number(), compared, "", "", store.units());
        } catch (RefusedException cannotBe) {
            String why = "The year could not be judged: " + cannotBe.lines().get(0) + ".";
            return EffectWords.of(trail.number(), Comparison.of(before, now), "", why, store.units());
        }
    }

    @Override
    public BuildSheet build() {
        // Whoever looks at a build sheet answers nothing meanwhile: what the references hold is given back for it.
        reckoning.rest();
        return sheets.build();
    }

    @Override
    public View.Building building() {
        return builds.view();
    }

    @Override
    public View.Building startBuild() {
        return builds.start();
    }

    @Override
    public View.Building stopBuild() {
        return builds.stop();
    }

    @Override
    public BuildSheet halfBuild() {
        return builds.half();
    }

    @Override
    public View.Clears clears() {
        return clears.view();
    }

    @Override
    public View.Clears searchClears() {
        return clears.start();
    }

    @Override
    public View.Clears stopClears() {
        return clears.stop();
    }

    @Override
    public View.Followed follow(String danger, int way) {
        Way found = clears.way(danger, way);
        Design before = store.design();
        store.becomes(found.appliedTo(before), Trail.How.CLEARED);
        View.Effect effect = EffectWords.of(
                store.trail().number(),
                Comparison.of(before, store.design()),
                "",
                SafetyVerdict.quick(store.design()).open(),
                store.units());
        String words = "It is in your design now: " + store.units().words(found.words()) + "."
                + (effect.danger().isEmpty() ? "" : " " + effect.danger())
                + store.toldOtherwise(
                        found.changes().stream().map(NamedValue::name).toList());
        return new View.Followed(words, effect);
    }

    @Override
    public Optional<Clears> foundClears() {
        return clears.found();
    }

    @Override
    public RebuildApp rebuild() {
        return rebuild;
    }

    @Override
    public DesignsApp designs() {
        return designs;
    }

    @Override
    public SurveyApp survey() {
        return survey;
    }

    @Override
    public Refresh refresh() {
        return refresh;
    }

    @Override
    public void close() {
        warming.close();
        clears.close();
        builds.close();
        snippets.close();
        reckoning.close();
        store.close();
    }

    private Lesson find(String lessonId) {
        return course.lesson(lessonId)
                .orElseThrow(() -> new UnknownNameException("There is no lesson '" + lessonId + "'."));
    }

    private static <S extends Step> S find(Lesson lesson, String stepId, Class<S> kind) {
        return lesson.steps().stream()
                .filter(step -> step.id().equals(stepId))
                .filter(kind::isInstance)
                .map(kind::cast)
                .findFirst()
                .orElseThrow(() ->
                        new UnknownNameException("There is no such step '" + stepId + "' in " + lesson.id() + "."));
    }
}
