package loftcoil.runner.course;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import loftcoil.runner.exercise.Code;
import loftcoil.runner.exercise.Exercise;
import loftcoil.runner.exercise.Quantity;
import loftcoil.runner.exercise.Reckoned;
import loftcoil.runner.exercise.Variation;
import loftcoil.runner.lesson.Step;
import org.junit.jupiter.api.Test;

/** Nothing is asked that the course has not shown: a sum with other numbers, the plot to read, the Java to write. */
class TaughtTest {

    /** An equals sign, a number, and what it counts. */
    private static final Pattern SUM = Pattern.compile("= (?:about )?[\\d−][\\d ,.]*(?:[^\\d\\s.,;]|$)?");

    private static final Pattern NUMBER = Pattern.compile("\\d+(?:\\.\\d+)?");

    private static final List<Taught> ALL = Taught.in(CourseReader.builtIn());

    private static List<Taught> calculations() {
        return ALL.stream()
                .filter(each ->
                        each.exercise() instanceof Quantity && !each.exercise().before())
                .toList();
    }

    @Test
    void everyCalculationIsShownBeforeItWithOtherNumbers() {
        assertTrue(calculations().size() >= 80);
        for (Taught each : calculations()) {
            String path = each.exercise().path();
            Taught.Shown shown = each.shown().orElseThrow(() -> new AssertionError(path + ": nothing shown before it"));
            assertTrue(
                    shown.snippet() || SUM.matcher(shown.words()).find(), path + " is shown no sum: " + shown.words());
        }
    }

    /** Who copies the worked example has not answered the question: not all the numbers of the question stand in it. */
    @Test
    void whatIsShownHasOtherNumbersThanWhatIsAsked() {
        List<String> same = new ArrayList<>();
        int compared = 0;
        for (Taught each : calculations()) {
            Taught.Shown shown = each.shown().orElseThrow();
            Quantity asked = (Quantity) each.exercise();
            for (long seed = 1;
                    seed <= 20 && !shown.snippet() && asked.about().vary().size() > 1;
                    seed++) {
                Exercise own = Variation.own(asked, seed);
                compared++;
                if (numbersIn(shown.words()).containsAll(numbersIn(own.text()))) {
                    same.add(asked.path() + " with seed " + seed);
                }
            }
        }
        assertEquals(List.of(), same);
        assertTrue(compared >= 500, "only " + compared);
    }

    private static Set<String> numbersIn(String text) {
        return NUMBER.matcher(text).results().map(MatchResult::group).collect(Collectors.toSet());
    }

    /** The pattern that finds a sum finds one, and takes no prose for it. */
    @Test
    void aSumIsToldFromProse() {
        assertTrue(SUM.matcher("So the rise is 1.2 kJ / 0.168 kJ = 7.1 °C.").find());
        assertFalse(SUM.matcher("The rise is found from heat = flow times warming; about 7 degrees.")
                .find());
        assertFalse(SUM.matcher("A tank of 120 L holds heat for two days.").find());
    }

    @Test
    void everyWordOfTheGlossaryInAQuestionIsExplainedByThen() {
        List<String> order = CourseReader.builtIn().lessons().stream()
                .map(lesson -> lesson.id())
                .toList();
        List<String> tooEarly = new ArrayList<>();
        for (Taught each : ALL) {
            each.ideas().forEach((word, lesson) -> {
                if (order.indexOf(lesson) > order.indexOf(each.lessonId())) {
                    tooEarly.add(each.exercise().path() + " asks with “" + word + "”, which " + lesson + " explains");
                }
            });
        }
        assertEquals(List.of(), tooEarly);
        assertTrue(ALL.stream().filter(each -> !each.ideas().isEmpty()).count() >= 80);
    }

    @Test
    void theNamesAQuestionInJavaNeedsStandBeforeIt() {
        List<Taught> java =
                ALL.stream().filter(each -> each.exercise() instanceof Code).toList();
        assertTrue(java.size() >= 15);
        assertEquals(
                List.of(),
                java.stream()
                        .filter(each -> !each.untaught().isEmpty())
                        .map(each -> each.exercise().path() + " needs " + each.untaught())
                        .toList());
    }

    /** The snippet that a question in Java points to has two in five of the names it needs, or more. */
    @Test
    void everyQuestionInJavaIsShownASnippetLikeIt() {
        List<String> unlike = new ArrayList<>();
        for (Taught each : ALL) {
            if (each.exercise() instanceof Code) {
                Taught.Shown shown = each.shown()
                        .orElseThrow(() -> new AssertionError(each.exercise().path() + ": nothing shown"));
                String java = snippet(shown.words());
                long there = each.names().keySet().stream()
                        .filter(name -> Pattern.compile("\\b" + name + "\\b")
                                .matcher(java)
                                .find())
                        .count();
                if (!shown.snippet() || 5 * there < 2L * each.names().size()) {
                    unlike.add(each.exercise().path() + ": " + shown.words() + " has " + there + " of " + each.names());
                }
            }
        }
        assertEquals(List.of(), unlike);
    }

    private static String snippet(String id) {
        return CourseReader.builtIn().lessons().stream()
                .flatMap(lesson -> lesson.steps().stream())
                .filter(step ->
                        step instanceof Step.Snippet snippet && snippet.id().equals(id))
                .map(step -> ((Step.Snippet) step).source())
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aWorkedSolutionIsASumAndSaysNothingOfTheChecker() {
        for (Taught each : ALL) {
            if (each.exercise() instanceof Reckoned reckoned && !reckoned.before()) {
                String text = reckoned.about().solution().text();
                String path = reckoned.path();
                assertTrue(!text.matches("(?is).*\\bthe check\\b.*"), path + " tells of the checker");
                assertTrue(
                        text.contains("{{answer}}") || SUM.matcher(text).find(), path + " ends in no figure: " + text);
            }
        }
    }
}
