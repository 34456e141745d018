package loftcoil.runner.workshop;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import loftcoil.runner.course.Course;
import loftcoil.runner.progress.AnswerState;

/**
 * A class as a table for other programs: a row for each learner and question, by RFC 4180, lines ended by CR LF, in UTF-8. A
 * text that a spreadsheet would take for a formula gets an apostrophe in front.
 */
public final class SummaryCsv {

    private static final List<String> HEAD = List.of(
            "learner",
            "lesson",
            "lesson_title",
            "question",
            "question_label",
            "kind",
            "state",
            "tries",
            "right_first_time",
            "wrong_ideas",
            "other_wrong_answers");

    private static final String STARTS_A_FORMULA = "=+-@\t\r";
    private static final String LINE_END = "\r\n";

    private SummaryCsv() {}

    /**
     * The table as text.
     *
     * @param course the course the class takes
     * @param roll its learners
     */
    public static String write(Course course, ClassRoll roll) {
        StringBuilder out = new StringBuilder(line(HEAD));
        List<Asked> asked = Asked.all(course);
        for (ClassRoll.Learner learner : roll.learners()) {
            asked.forEach(each -> out.append(line(row(learner, each))));
        }
        return out.toString();
    }

    private static List<String> row(ClassRoll.Learner learner, Asked asked) {
        Tried tried = asked.by(learner.progress());
        List<String> cells = new ArrayList<>();
        cells.add(learner.name());
        cells.add(asked.lesson().id());
        cells.add(asked.lesson().title());
        cells.add(asked.step().id());
        cells.add(asked.step().label());
        cells.add(asked.kind());
        cells.add(tried.state().map(AnswerState::code).orElse("not tried"));
        cells.add(Integer.toString(tried.tries()));
        cells.add(tried.tries() == 0 ? "" : tried.rightFirst() ? "yes" : "no");
        cells.add(tried.ideas().stream().map(asked::idea).collect(Collectors.joining("; ")));
        cells.add(Integer.toString(tried.otherWrong()));
        return cells;
    }

    private static String line(List<String> cells) {
        return cells.stream().map(SummaryCsv::cell).collect(Collectors.joining(",", "", LINE_END));
    }

    static String cell(String text) {
        String safe = !text.isEmpty() && STARTS_A_FORMULA.indexOf(text.charAt(0)) >= 0 ? "'" + text : text;
        boolean quoted = safe.chars().anyMatch(c -> c == ',' || c == '"' || c == '\r' || c == '\n');
        return quoted ? "\"" + safe.replace("\"", "\"\"") + "\"" : safe;
    }
}
