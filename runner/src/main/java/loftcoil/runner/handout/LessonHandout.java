package loftcoil.runner.handout;

import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import loftcoil.engine.design.DesignJson;
import loftcoil.engine.design.Example;
import loftcoil.engine.study.ProgressListener;
import loftcoil.runner.course.Course;
import loftcoil.runner.lesson.Lesson;
import loftcoil.runner.session.DesignBinding;
import loftcoil.runner.session.Session;
import loftcoil.runner.session.SessionSetup;
import loftcoil.runner.show.Html;

/** A lesson on paper: for the class with blanks and lines to write on, or as the teacher's key with all answers. */
public final class LessonHandout {

    private final Frame frame;
    private final String top;
    private final List<Block> blocks;

    private LessonHandout(Frame frame, String top, List<Block> blocks) {
        this.frame = frame;
        this.top = top;
        this.blocks = blocks;
    }

    /**
     * Makes it: runs the lesson's Java with the orchard bothy, which every learner starts from, and works out the numbers of the
     * class.
     *
     * @param course where the lesson's exercises are
     * @param lesson one of its lessons
     * @param setup how the Java runs
     * @param setting for whom and on what
     * @param listener told after each snippet that ran
     */
    public static LessonHandout of(
            Course course, Lesson lesson, SessionSetup setup, LessonSetting setting, ProgressListener listener) {
        return of(course, lesson, () -> Session.openWithoutSpare(setup), setting, listener);
    }

    /** Makes it in sessions from elsewhere, which are closed after it. */
    static LessonHandout of(Course course, Lesson lesson, Supplier<Session> sessions, LessonSetting setting) {
        return of(course, lesson, sessions, setting, ProgressListener.NONE);
    }

    private static LessonHandout of(
            Course course,
            Lesson lesson,
            Supplier<Session> sessions,
            LessonSetting setting,
            ProgressListener listener) {
        try (Session session = sessions.get();
                Session reckoning = sessions.get()) {
            String design = DesignJson.write(Example.orchardBothy());
            DesignBinding.bind(session, design);
            DesignBinding.bind(reckoning, design);
            LessonBody body = new LessonBody(
                    course, new LessonRuns(session, lesson, listener), new HandoutReckoning(reckoning), setting);
            return new LessonHandout(frame(lesson, setting), body.top(lesson), body.blocks(lesson));
        }
    }

    private static Frame frame(Lesson lesson, LessonSetting setting) {
        String what = setting.key() ? "Teacher’s key" : "Handout";
        return new Frame(
                what + ": " + lesson.title(),
                "A lesson of Loftcoil on paper.",
                new Frame.Head(what + ": " + lesson.title(), "numbers of class seed " + setting.seed()),
                setting.paper());
    }

    /** As one HTML file that needs no other and runs no script. */
    public String html() {
        return frame.forBrowser(oneAfterTheOther());
    }

    /** As PDF, in two columns; in one where something of the lesson is taller than a page. */
    public byte[] pdf() {
        return pdf(frame.paper());
    }

    /** The same on another paper. */
    byte[] pdf(Paper paper) {
        Frame on = frame.on(paper);
        return HandoutPdf.of(on.forPdf(new TwoColumns(on).body(top, blocks).orElseGet(this::oneAfterTheOther)));
    }

    private String oneAfterTheOther() {
        return top
                + Html.element(
                        "div",
                        "columns",
                        blocks.stream()
                                .map(block -> Html.element("div", "block", block.html()))
                                .collect(Collectors.joining()));
    }
}
