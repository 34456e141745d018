package loftcoil.runner.handout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import java.util.stream.Stream;
import loftcoil.engine.words.Units;
import loftcoil.runner.course.Course;
import loftcoil.runner.course.CourseReader;
import loftcoil.runner.lesson.Lesson;
import loftcoil.runner.session.SharedSession;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A handout is at most six pages and a key eight, and nothing on them stands on anything else. */
class LessonPagesTest {

    private static final int MOST_OF_A_HANDOUT = 6;
    private static final int MOST_OF_A_KEY = 8;
    private static final long SEED = 1;

    private static final Course COURSE = CourseReader.builtIn();

    static Stream<Lesson> lessons() {
        return COURSE.lessons().stream();
    }

    /** Two that were the longest when this was written; the rest is left to the thorough run. */
    @Test
    void ofTwoLongLessons() throws IOException {
        fits(lesson("06"), Units.METRIC, false);
        fits(lesson("08"), Units.US, true);
    }

    @Tag("thorough")
    @ParameterizedTest
    @MethodSource("lessons")
    void ofEveryLessonOnBothPapersInBothUnits(Lesson lesson) throws IOException {
        for (Units units : Units.values()) {
            fits(lesson, units, false);
            fits(lesson, units, true);
        }
    }

    @Test
    void wordsOnWordsAreSeen() throws IOException {
        Frame frame = new Frame("Two", "Two", new Frame.Head("", ""), Paper.A4);
        String two =
                "<p style=\"position: absolute; top: 20mm\">Warm</p><p style=\"position: absolute; top: %s\">water</p>";
        assertTrue(PdfGlyphs.collisions(HandoutPdf.of(frame.forPdf(two.formatted("20mm"))))
                        .size()
                >= 4);
        assertEquals(List.of(), PdfGlyphs.collisions(HandoutPdf.of(frame.forPdf(two.formatted("30mm")))));
    }

    private static Lesson lesson(String number) {
        return COURSE.lessons().stream()
                .filter(lesson -> lesson.id().startsWith(number))
                .findFirst()
                .orElseThrow();
    }

    private static void fits(Lesson lesson, Units units, boolean key) throws IOException {
        LessonHandout made =
                LessonHandout.of(COURSE, lesson, SharedSession::lent, new LessonSetting(Paper.A4, units, SEED, key));
        for (Paper paper : Paper.values()) {
            byte[] pdf = made.pdf(paper);
            String which = lesson.id() + (key ? ", key, " : ", handout, ") + paper + ", " + units;
            try (PDDocument document = Loader.loadPDF(pdf)) {
                int most = key ? MOST_OF_A_KEY : MOST_OF_A_HANDOUT;
                assertTrue(document.getNumberOfPages() <= most, which + ": " + document.getNumberOfPages() + " pages");
            }
            assertEquals(List.of(), PdfGlyphs.collisions(pdf), which);
            assertEquals(List.of(), PdfGlyphs.outsideColumns(pdf), which);
        }
    }
}
