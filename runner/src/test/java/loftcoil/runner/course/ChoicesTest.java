package loftcoil.runner.course;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

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

    @Test
    void theTextsOfAQuestionAreOfLikeLength() {
        for (Choice choice : CHOICES) {
            int least = choice.options().stream()
                    .mapToInt(ChoicesTest::length)
                    .min()
                    .orElseThrow();
            int most = choice.options().stream()
                    .mapToInt(ChoicesTest::length)
                    .max()
                    .orElseThrow();
            assertTrue(most <= 1.8 * least + 5, () -> choice.path() + ": " + least + " to " + most);
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
