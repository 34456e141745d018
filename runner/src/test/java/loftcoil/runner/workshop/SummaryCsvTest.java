package loftcoil.runner.workshop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import loftcoil.runner.course.Course;
import loftcoil.runner.progress.AnswerState;
import loftcoil.runner.progress.Progress;
import loftcoil.runner.progress.Progress.Given;
import loftcoil.runner.progress.Progress.LessonWork;
import loftcoil.runner.show.TryCourse;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The table against RFC 4180, section 2: rules 1 to 7, by their numbers. */
class SummaryCsvTest {

    private static final Course COURSE = TryCourse.read();

    private static String table(String learner) {
        Progress progress = Progress.start(1)
                .withWork(
                        "01-try",
                        LessonWork.NONE
                                .withAnswer("head", new Given("9", AnswerState.WRONG, "no gravity, \"or\" so"))
                                .withAnswer("head", new Given("1", AnswerState.WRONG, "")));
        return SummaryCsv.write(COURSE, new ClassRoll(List.of(new ClassRoll.Learner(learner, progress)), List.of()));
    }

    @Test
    void everyRecordEndsWithCrLfAndTheFirstIsTheHeader() {
        // Rules 1, 2 and 3.
        String table = table("Ada");
        assertTrue(table.endsWith("\r\n"));
        assertEquals(
                table.replace("\r\n", "").length(),
                table.replace("\r", "").replace("\n", "").length());
        assertTrue(table.startsWith("learner,lesson,lesson_title,question,"), table);
    }

    @Test
    void everyRecordHasAsManyFieldsAsTheHeader() {
        // Rule 4.
        List<String> lines = table("Ada").lines().toList();
        int columns = fields(lines.get(0));
        assertEquals(11, columns);
        assertEquals(1 + Asked.all(COURSE).size(), lines.size());
        lines.forEach(line -> assertEquals(columns, fields(line), line));
    }

    /** Fields of a record without line ends in it: commas with an even number of quotes after them, and one. */
    private static int fields(String record) {
        return record.split(",(?=(?:[^\"]*\"[^\"]*\")*[^\"]*$)", -1).length;
    }

    @Test
    void aQuestionHasItsStateTriesAndIdeas() {
        assertTrue(
                table("Ada")
                        .contains(
                                "Ada,01-try,A first try,head,head,question,wrong,2,no,\"no gravity, \"\"or\"\" so\",1\r\n"),
                table("Ada"));
        assertTrue(table("Ada").contains("Ada,01-try,A first try,way,which way,question,not tried,0,,,0\r\n"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                // Rules 5, 6 and 7.
                "plain|plain",
                "a,b|\"a,b\"",
                "say \"so\"|\"say \"\"so\"\"\"",
                "Zoë 日本|Zoë 日本",
                // What a spreadsheet would run (OWASP, CSV injection).
                "=1+1|'=1+1",
                "+1|'+1",
                "-1|'-1",
                "@SUM(A1)|'@SUM(A1)",
                "=HYPERLINK(\"x\",\"y\")|\"'=HYPERLINK(\"\"x\"\",\"\"y\"\")\"",
            })
    void aFieldIsQuotedWhereItMustBeAndNeverAFormula(String text, String field) {
        assertEquals(field, SummaryCsv.cell(text));
    }

    @Test
    void lineEndsStayInsideQuotes() {
        assertEquals("\"a\r\nb\"", SummaryCsv.cell("a\r\nb"));
        assertEquals("\"'\r=1\"", SummaryCsv.cell("\r=1"));
        assertEquals("'\t=1", SummaryCsv.cell("\t=1"));
        assertEquals("", SummaryCsv.cell(""));
    }
}
