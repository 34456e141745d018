package loftcoil.runner.handout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import loftcoil.engine.words.Units;
import loftcoil.runner.course.Course;
import loftcoil.runner.exercise.Numbers;
import loftcoil.runner.exercise.Variation;
import loftcoil.runner.session.SharedSession;
import loftcoil.runner.show.TryCourse;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;

/** A lesson on paper: blanks for the class, answers for the teacher, the numbers of the seed for both. */
class LessonHandoutTest {

    private static final Course COURSE = TryCourse.read();
    private static final long SEED = 4;
    private static final String SHEET = html(SEED, false);
    private static final String KEY = html(SEED, true);

    private static LessonHandout made(long seed, boolean key) {
        return LessonHandout.of(
                COURSE,
                COURSE.lesson("01-try").orElseThrow(),
                SharedSession::lent,
                new LessonSetting(Paper.LETTER, Units.METRIC, seed, key));
    }

    private static String html(long seed, boolean key) {
        return made(seed, key).html();
    }

    @Test
    void theSheetHasProseCautionQuestionsAndLines() {
        assertTrue(SHEET.contains("Warm water is lighter than cold."));
        assertTrue(SHEET.contains("<strong>Danger.</strong> Never light a fire under a dry coil."));
        assertTrue(SHEET.contains("1. Guess before you go on: a guess"));
        assertTrue(SHEET.contains("Answer: <span class=\"line\">"));
        assertTrue(SHEET.contains("4. Decide for your own design: the tank"));
        assertTrue(SHEET.contains("Name <span class=\"line\">"));
    }

    @Test
    void whatTheClassHasGuessedIsLeftToBeWrittenInAndTheKeyHasIt() {
        assertTrue(SHEET.contains("value: ________"), "the value of the first snippet");
        assertTrue(KEY.contains("value: 16.5"), "999.7 - 983.2 by IAPWS SR6-08");
        assertFalse(SHEET.contains("value: 16.5"));
        // Nothing was guessed before the second: it is printed for both.
        assertTrue(SHEET.contains(", lighter by 16."), "its print");
    }

    @Test
    void theKeyAloneHasAnswersWorkedSolutionsAndWrongIdeas() {
        assertTrue(KEY.contains("<strong>Answer: 17 kg"), "999.70 - 983.20 kg/m³ by IAPWS SR6-08, to two digits");
        assertTrue(KEY.contains("<em>Wrong idea: no gravity</em>") && KEY.contains("Say: Times gravity."));
        assertTrue(KEY.contains("<strong>Right:</strong> up"));
        assertTrue(KEY.contains("It is lighter."), "what to say to the wrong choice");
        assertTrue(KEY.contains("taken as right within 2 %."));
        assertTrue(KEY.contains("IAPWS SR6-08(2011), table of densities"));
        for (String secret : new String[] {"Times gravity.", "It floats.", "Source:", "Answer: 16"}) {
            assertFalse(SHEET.contains(secret), secret);
        }
    }

    @Test
    void aKeyInUsUnitsSaysEachAnswerInThemToo() {
        String key = LessonHandout.of(
                        COURSE,
                        COURSE.lesson("01-try").orElseThrow(),
                        SharedSession::lent,
                        new LessonSetting(Paper.LETTER, Units.US, SEED, true))
                .html();
        assertTrue(key.matches("(?s).*<strong>Answer: [\\d.]+ Pa, which is [\\d.]+ inH₂O.*"), key);
        assertFalse(KEY.contains(", which is "), "a metric key repeats nothing");
    }

    @Test
    void bothHaveTheNumbersThatALearnerWithThisSeedMeets() {
        Numbers numbers = Variation.numbers(COURSE.exercise("01-try/head"), SEED);
        String question = numbers.fill("Two columns of {{heightM}} m");
        assertTrue(SHEET.contains(question) && KEY.contains(question), question);
        assertNotEquals(
                numbers, Variation.numbers(COURSE.exercise("01-try/head"), SEED + 1), "another seed, other numbers");
        assertTrue(KEY.contains("class seed " + SEED));
    }

    @Test
    void aFaultySystemIsDrawnWithWhatMayBeChangedAndTheKeyMendsIt() {
        for (boolean key : new boolean[] {false, true}) {
            String page = LessonHandout.of(
                            COURSE,
                            COURSE.lesson("02-more").orElseThrow(),
                            SharedSession::lent,
                            new LessonSetting(Paper.A4, Units.METRIC, SEED, key))
                    .html();
            assertTrue(page.contains("The coil knocks and the tank stays cold."), "the symptoms");
            assertTrue(
                    page.contains("The system as it is.") && page.contains("The loop circulates."), "system and aim");
            assertTrue(page.contains("EN1057 22x0.9 | EN1057 28x0.9"), "what a lever allows");
            assertEquals(key, page.contains("Heat does not push down."));
            assertEquals(key, page.contains("Mended by:"));
        }
    }

    @Test
    void theDrawingAndThePlotAreDrawn() {
        assertEquals(2, SHEET.split("<svg", -1).length - 1);
        assertTrue(SHEET.contains("Flow against height"));
        assertFalse(SHEET.matches("(?s).*<(?:script|link|iframe)\\b.*"));
    }

    @Test
    void thePdfSaysTheSameOnLetterPaper() throws IOException {
        byte[] pdf = made(SEED, true).pdf();
        String text = PdfText.of(pdf);
        assertTrue(text.contains("Teacher’s key: A first try"), text);
        assertTrue(text.contains("Wrong idea: no gravity ("), text);
        try (PDDocument document = Loader.loadPDF(pdf)) {
            assertEquals(612, document.getPage(0).getMediaBox().getWidth(), 0.5);
            assertTrue(PdfText.fonts(document).values().stream().allMatch(embedded -> embedded));
        }
    }

    @Test
    void numbersThatTheJavaItselfHoldsStay() {
        assertEquals(
                "a litre at 10 °C weighs _________ g",
                SnippetPart.blanked("a litre at 10 °C weighs 999.702 g", "double coldC = 10;"));
        assertEquals("H2O has ________ Pa", SnippetPart.blanked("H2O has −5 Pa", ""));
    }
}
