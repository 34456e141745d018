package loftcoil.runner.course;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.IntSummaryStatistics;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import loftcoil.runner.exercise.Choice;
import loftcoil.runner.exercise.Variation;
import org.junit.jupiter.api.Test;

/** Who has read nothing gets no choice right by its length or its place. */
class ChoicesTest {

    private static final List<Choice> CHOICES = CourseReader.builtIn().exercises().values().stream()
            .filter(Choice.class::isInstance)
            .map(Choice.class::cast)
            .toList();

    private static final int SEEDS = 200;

    private static int length(Choice.Option option) {
        return option.text().length();
    }

    /** The laws below hold for nothing where there is nothing. */
    @Test
    void thereAreFortyChoicesEachWithOneRightAndTwoOrMoreWrong() {
        assertTrue(CHOICES.size() >= 40, CHOICES.size() + " choices");
        for (Choice choice : CHOICES) {
            assertEquals(
                    1, choice.options().stream().filter(Choice.Option::right).count(), choice.path());
            assertTrue(choice.options().size() >= 3, choice.path());
        }
    }

    private static boolean alike(List<Integer> lengths) {
        IntSummaryStatistics all = lengths.stream().mapToInt(Integer::intValue).summaryStatistics();
        return all.getMax() <= 1.8 * all.getMin() + 5;
    }

    @Test
    void theLawOfLikeLengthCatchesOneThatStandsOut() {
        assertFalse(alike(List.of(30, 34, 80, 36)));
        assertFalse(alike(List.of(70, 74, 20, 76)));
        assertTrue(alike(List.of(40, 60, 70, 44)));
    }

    @Test
    void theTextsOfAQuestionAreOfLikeLength() {
        for (Choice choice : CHOICES) {
            List<Integer> lengths =
                    choice.options().stream().map(ChoicesTest::length).toList();
            assertTrue(alike(lengths), () -> choice.path() + ": " + lengths);
        }
    }

    @Test
    void theRightOneIsSeldomTheLongest() {
        List<String> longest = CHOICES.stream()
                .filter(choice -> choice.options().stream()
                        .filter(option -> !option.right())
                        .allMatch(option -> length(option) < length(right(choice))))
                .map(Choice::path)
                .toList();
        assertTrue(longest.size() <= CHOICES.size() / 3, longest::toString);
        // Nor is the shortest a better guess.
        long shortest = CHOICES.stream()
                .filter(choice -> choice.options().stream()
                        .filter(option -> !option.right())
                        .allMatch(option -> length(option) > length(right(choice))))
                .count();
        assertTrue(shortest <= CHOICES.size() / 3, shortest + " of " + CHOICES.size());
    }

    @Test
    void theSeedSaysTheOrder() {
        for (Choice choice : CHOICES) {
            TreeMap<Integer, Integer> places = new TreeMap<>();
            for (long seed = 1; seed <= SEEDS; seed++) {
                Choice own = (Choice) Variation.own(choice, seed);
                assertEquals(Variation.own(choice, seed), own);
                assertEquals(texts(choice), texts(own), choice.path());
                places.merge(own.options().indexOf(right(own)), 1, Integer::sum);
            }
            int fair = SEEDS / choice.options().size();
            Set<Integer> all =
                    IntStream.range(0, choice.options().size()).boxed().collect(Collectors.toSet());
            assertEquals(all, places.keySet(), choice.path());
            assertTrue(
                    places.values().stream().allMatch(count -> count > fair / 2 && count < 2 * fair), places::toString);
        }
    }

    /** A wrong choice has the same name for every learner: its place as the course has it. */
    @Test
    void theNumberOfAChoiceStaysWithIt() {
        for (Choice choice : CHOICES) {
            Choice own = (Choice) Variation.own(choice, 3);
            for (Choice.Option option : own.options()) {
                Choice.Option written = choice.options().get(option.number() - 1);
                assertEquals(written.right(), option.right(), choice.path());
            }
        }
    }

    private static Set<Integer> texts(Choice choice) {
        return choice.options().stream().map(Choice.Option::number).collect(Collectors.toCollection(TreeSet::new));
    }

    private static Choice.Option right(Choice choice) {
        return choice.options().stream()
                .filter(Choice.Option::right)
                .findFirst()
                .orElseThrow();
    }
}
