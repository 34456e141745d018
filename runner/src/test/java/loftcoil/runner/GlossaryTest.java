package loftcoil.runner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import loftcoil.runner.course.Course;
import loftcoil.runner.course.CourseReader;
import loftcoil.runner.course.Term;
import loftcoil.runner.lesson.Lesson;
import loftcoil.runner.lesson.Step;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.StrongEmphasis;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.text.TextContentRenderer;
import org.junit.jupiter.api.Test;

/**
 * The glossary against the lessons. A term is what a lesson sets in bold in one to three words without a mark at their end; a
 * sentence in bold is there for its weight and needs no entry.
 */
class GlossaryTest {

    private static final int LONGEST_TERM_WORDS = 3;
    private static final Pattern TERM = Pattern.compile("[^.,:;!?]*\\p{IsAlphabetic}[^.,:;!?]*");
    private static final Parser PARSER =
            Parser.builder().extensions(List.of(TablesExtension.create())).build();
    private static final TextContentRenderer PLAIN =
            TextContentRenderer.builder().build();

    private final Course course = CourseReader.builtIn();

    @Test
    void everyTermOfALessonHasItsEntry() {
        List<String> names = course.terms().stream().map(GlossaryTest::key).toList();
        List<String> missing = new ArrayList<>();
        for (Lesson lesson : course.lessons()) {
            for (String bold : boldIn(lesson)) {
                if (isTerm(bold) && names.stream().noneMatch(name -> isFormOf(bold, name))) {
                    missing.add(lesson.id() + ": " + bold);
                }
            }
        }
        assertEquals(List.of(), missing, "no entry in lessons/words.md");
    }

    @Test
    void everyEntryNamesTheLessonInWhichItsTermFirstStands() {
        assertTrue(course.terms().size() >= 30);
        for (Term term : course.terms()) {
            Lesson lesson = course.lesson(term.lessonId()).orElseThrow(() -> new AssertionError(term.name()));
            assertTrue(text(lesson).contains(key(term)), term.name() + " is not in " + lesson.id());
            for (Lesson earlier : course.lessons().subList(0, course.lessons().indexOf(lesson))) {
                assertTrue(
                        boldIn(earlier).stream().noneMatch(bold -> isFormOf(bold, key(term))),
                        term.name() + " is explained earlier, in " + earlier.id());
            }
        }
    }

    @Test
    void entriesStandInOrder() {
        List<String> names = course.terms().stream().map(Term::name).toList();
        Comparator<String> byWords =
                Comparator.comparing(name -> name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9 ]", ""));
        assertEquals(names.stream().sorted(byWords).toList(), names);
    }

    private static boolean isTerm(String bold) {
        return bold.split(" ", -1).length <= LONGEST_TERM_WORDS
                && TERM.matcher(bold).matches();
    }

    private static boolean isFormOf(String bold, String name) {
        String word = bold.toLowerCase(Locale.ROOT);
        return word.equals(name) || word.equals(name + "s") || word.equals(name + "es");
    }

    /** The term without its symbol in brackets. */
    private static String key(Term term) {
        return term.name().toLowerCase(Locale.ROOT).replaceAll(" \\(.*\\)$", "");
    }

    private static List<String> boldIn(Lesson lesson) {
        List<String> found = new ArrayList<>();
        lesson.steps().forEach(step -> PARSER.parse(markdown(step)).accept(new AbstractVisitor() {
            @Override
            public void visit(StrongEmphasis bold) {
                found.add(PLAIN.render(bold).strip().replaceAll("\\s+", " "));
            }
        }));
        return found;
    }

    private static String text(Lesson lesson) {
        StringBuilder all = new StringBuilder(lesson.title());
        lesson.steps().forEach(step -> all.append(' ').append(markdown(step)));
        return all.toString().replaceAll("[\\s*]+", " ").toLowerCase(Locale.ROOT);
    }

    private static String markdown(Step step) {
        if (step instanceof Step.Prose prose) {
            return prose.markdown();
        }
        return step instanceof Step.Caution caution ? caution.markdown() : "";
    }
}
