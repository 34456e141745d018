package loftcoil.runner.handout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import loftcoil.engine.design.DesignJson;
import loftcoil.engine.design.Example;
import loftcoil.engine.study.ProgressListener;
import loftcoil.runner.chart.ChartOrder;
import loftcoil.runner.course.Course;
import loftcoil.runner.course.CourseReader;
import loftcoil.runner.exercise.Exercise;
import loftcoil.runner.exercise.Quantity;
import loftcoil.runner.exercise.Variation;
import loftcoil.runner.lesson.Lesson;
import loftcoil.runner.lesson.Step;
import loftcoil.runner.session.DesignBinding;
import loftcoil.runner.session.Session;
import loftcoil.runner.session.SharedSession;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What a question has the learner read off a plot lies within that plot, and may be as far off as its grid lets one see. */
@Tag("thorough")
class PlotReadingTest {

    private static final Course COURSE = CourseReader.builtIn();
    private static final int SEEDS = 3;

    /** A tenth of a grid of six lines: nobody reads finer. */
    private static final double FINEST = 1.0 / 60;

    /** Lessons with a question that is answered by reading a plot, of which the questions say so. */
    static Stream<Lesson> lessons() {
        return COURSE.lessons().stream().filter(lesson -> !read(lesson).isEmpty());
    }

    private static List<Quantity> read(Lesson lesson) {
        List<Quantity> read = new ArrayList<>();
        for (Step step : lesson.steps()) {
            if (step instanceof Step.Question question && question.asked() == Step.Asked.QUESTION) {
                Exercise exercise = COURSE.exercise(question.exercise());
                if (exercise instanceof Quantity quantity
                        && exercise.text().matches("(?is).*(read (it )?(from|off)|read the plot).*")) {
                    read.add(quantity);
                }
            }
        }
        return read;
    }

    @ParameterizedTest
    @MethodSource("lessons")
    void theAnswerLiesWithinTheAxisAndIsNotAskedFinerThanTheGrid(Lesson lesson) {
        List<ChartOrder> charts = new ArrayList<>();
        List<String> outside = new ArrayList<>();
        try (Session session = SharedSession.lent();
                Session reckoning = SharedSession.lent()) {
            String design = DesignJson.write(Example.orchardBothy());
            DesignBinding.bind(session, design);
            DesignBinding.bind(reckoning, design);
            LessonRuns runs = new LessonRuns(session, lesson, ProgressListener.NONE);
            HandoutReckoning reckoner = new HandoutReckoning(reckoning);
            for (Step step : lesson.steps()) {
                if (step instanceof Step.Snippet snippet) {
                    charts.addAll(runs.run(snippet).trace().charts());
                } else if (step instanceof Step.Question question) {
                    for (long seed = 1; seed <= SEEDS; seed++) {
                        Exercise own = Variation.own(COURSE.exercise(question.exercise()), seed);
                        if (own instanceof Quantity quantity
                                && read(lesson).stream()
                                        .anyMatch(each -> each.path().equals(own.path()))) {
                            double value = reckoner.number(quantity.reference().java());
                            double tolerance = Math.max(
                                    quantity.tolerance().absolute(),
                                    quantity.tolerance().relative() * Math.abs(value));
                            if (charts.stream().noneMatch(chart -> readable(chart, quantity, value, tolerance))) {
                                outside.add(own.path() + " comes to " + value + " ± " + tolerance);
                            }
                        }
                    }
                }
            }
        }
        assertTrue(!charts.isEmpty(), lesson.id());
        assertEquals(List.of(), outside);
    }

    private static boolean readable(ChartOrder chart, Quantity quantity, double value, double tolerance) {
        String unit = quantity.reference().unit();
        List<Double> xs =
                chart.curves().stream().flatMap(curve -> curve.xs().stream()).toList();
        List<Double> ys = chart.curves().stream()
                .flatMap(curve -> curve.ys().stream())
                .filter(Double::isFinite)
                .toList();
        boolean difference = quantity.temperature() == Quantity.Temperature.DIFFERENCE;
        return within(chart.across().unit(), unit, xs, value, tolerance, false)
                || within(chart.up().unit(), unit, ys, value, tolerance, difference);
    }

    private static boolean within(
            String axis, String unit, List<Double> values, double value, double tolerance, boolean difference) {
        double low = values.stream().min(Double::compare).orElse(Double.NaN);
        double high = values.stream().max(Double::compare).orElse(Double.NaN);
        boolean inside = difference ? value <= high - low : value >= low && value <= high;
        return (axis.equals(unit) || unit.isEmpty()) && inside && tolerance >= FINEST * (high - low);
    }
}
