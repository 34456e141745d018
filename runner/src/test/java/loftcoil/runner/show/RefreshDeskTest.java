package loftcoil.runner.show;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import loftcoil.runner.progress.AnswerState;
import loftcoil.runner.progress.LessonProgress.Recall;
import org.junit.jupiter.api.Test;

class RefreshDeskTest extends TryApp {

    private static final String HEAD = "01-try/head";
    private static final String WAY = "01-try/way";
    private static final String GUESS = "01-try/guess";

    private List<Optional<AnswerState>> states() {
        return bench.refresh().path().questions().stream()
                .map(RefreshView.Question::state)
                .toList();
    }

    private Recall found() {
        return bench.refresh().path().lessons().get(0).recall();
    }

    @Test
    void thePathAsksTheQuestionsOfItsFileInTheirOrder() {
        RefreshView.Path path = bench.refresh().path();
        assertEquals(
                List.of(HEAD, WAY, GUESS),
                path.questions().stream().map(RefreshView.Question::id).toList());
        assertEquals(2, path.minutes());
        assertEquals("A first try", path.questions().get(0).lesson());
        assertEquals(List.of("up", "down"), path.questions().get(1).options());
        assertEquals(List.of(Optional.empty(), Optional.empty(), Optional.empty()), states());
        assertEquals(Recall.OPEN, found());
        assertEquals(Recall.OPEN, bench.course().lessons().get(0).recall());
    }

    @Test
    void oneMissedQuestionMakesItsLessonFadedAndNoLaterAnswerMendsThat() {
        assertEquals(AnswerState.RIGHT, bench.refresh().answer(WAY, "up").state());
        assertEquals(Recall.OPEN, found());
        RefreshView.Said wrong = bench.refresh().answer(GUESS, "3 kg/m3");
        assertEquals(AnswerState.WRONG, wrong.state());
        assertEquals("999.7 - 983.2", wrong.workedMarkdown());
        assertEquals("IAPWS SR6-08(2011)", wrong.source());
        assertEquals(Recall.FADED, found());

        assertEquals(
                AnswerState.RIGHT, bench.refresh().answer(GUESS, "16.5 kg/m3").state());
        assertEquals(Optional.of(AnswerState.WRONG), states().get(2));
        assertEquals(Recall.FADED, bench.course().lessons().get(0).recall());
    }

    @Test
    void notToRememberIsToldTheSolutionAndCountsAsMissed() {
        RefreshView.Said said = bench.refresh().forgotten(HEAD);
        assertEquals(AnswerState.FORGOTTEN, said.state());
        assertTrue(said.workedMarkdown().matches("It comes to .* Pa\\."), said.workedMarkdown());
        assertEquals(Optional.of(AnswerState.FORGOTTEN), states().get(0));
        assertEquals(Recall.FADED, found());
    }

    @Test
    void whatCannotBeReadIsNoAnswer() {
        assertEquals(AnswerState.UNREAD, bench.refresh().answer(HEAD, "much").state());
        assertEquals(AnswerState.UNREAD, bench.refresh().answer(HEAD, "5 kg").state());
        assertEquals(List.of(Optional.empty(), Optional.empty(), Optional.empty()), states());
    }

    @Test
    void allRightHoldsAndIsThereAfterAReopen() {
        bench.refresh().answer(WAY, "1");
        bench.refresh().answer(GUESS, "16.5 kg/m3");
        // The numbers are those of the refresher's own seed: any height of 1 to 3 m may stand in the question.
        String height = bench.refresh().path().questions().get(0).markdown().replaceAll(".*of ([0-9.]+) m.*", "$1");
        double pascals = 9.80665 * Double.parseDouble(height) * (992.22 - 983.20);
        assertEquals(
                AnswerState.RIGHT, bench.refresh().answer(HEAD, pascals + " Pa").state());
        close();
        open();
        assertTrue(bench.refresh().path().done());
        assertEquals(Recall.HELD, found());
        assertEquals(Recall.HELD, bench.course().lessons().get(0).recall());
        assertEquals(
                "Nothing has faded: every question was right.",
                bench.refresh().path().words());
    }

    @Test
    void begunAgainItKnowsNothingAndTheLessonsKeepTheirAnswers() {
        bench.answer("01-try", "way", "up");
        bench.refresh().forgotten(WAY);
        assertFalse(bench.refresh().again().done());
        assertEquals(List.of(Optional.empty(), Optional.empty(), Optional.empty()), states());
        assertEquals(1, bench.course().lessons().get(0).done());
    }

    @Test
    void aQuestionThatIsNotInItIsRefused() {
        assertThrows(UnknownNameException.class, () -> bench.refresh().answer("02-more/twice", "42"));
        assertThrows(UnknownNameException.class, () -> bench.refresh().forgotten("02-more/none"));
    }
}
