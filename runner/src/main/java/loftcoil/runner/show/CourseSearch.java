package loftcoil.runner.show;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.BiFunction;
import loftcoil.runner.course.Course;
import loftcoil.runner.course.Term;
import loftcoil.runner.lesson.Lesson;
import loftcoil.runner.lesson.Step;

/** Finds words in lessons, glossary and questions. Accents, capitals and marks do not count; worked solutions are not looked into. */
final class CourseSearch {

    private static final int MOST = 40;
    private static final int AROUND = 90;

    private final List<Entry> entries = new ArrayList<>();

    private record Entry(View.Found found, String text, String folded, String foldedHead) {}

    CourseSearch(Course course, BiFunction<Lesson, Step.Question, String> question) {
        for (Term term : course.terms()) {
            String slug = term.name()
                    .toLowerCase(Locale.ROOT)
                    .replaceAll("[^a-z0-9]+", "-")
                    .replaceAll("^-|-$", "");
            add("word", "", slug, "", term.name(), term.markdown());
        }
        for (Lesson lesson : course.lessons()) {
            String head = lesson.title();
            for (Step step : lesson.steps()) {
                head = add(lesson, step, head, question);
            }
        }
    }

    private String add(Lesson lesson, Step step, String head, BiFunction<Lesson, Step.Question, String> question) {
        String title = lesson.title();
        if (step instanceof Step.Prose prose) {
            String last = head;
            for (String part : prose.markdown().split("(?m)^(?=#)", -1)) {
                boolean headed = part.startsWith("#");
                last = headed ? plain(part.lines().findFirst().orElse("")) : last;
                add(
                        "lesson",
                        lesson.id(),
                        prose.id(),
                        title,
                        last,
                        headed ? part.substring(part.indexOf('\n') + 1) : part);
            }
            return last;
        }
        if (step instanceof Step.Caution caution) {
            add("caution", lesson.id(), caution.id(), title, head, caution.markdown());
        } else if (step instanceof Step.Snippet snippet) {
            add("java", lesson.id(), snippet.id(), title, snippet.id().replace('-', ' '), snippet.source());
        } else if (step instanceof Step.Question asked) {
            add("question", lesson.id(), asked.id(), title, asked.label(), question.apply(lesson, asked));
        }
        return head;
    }

    private void add(String kind, String lesson, String step, String where, String head, String markdown) {
        String text = kind.equals("java") ? markdown.replaceAll("\\s+", " ") : plain(markdown);
        entries.add(new Entry(
                new View.Found(kind, lesson, step, where, head, ""), text, fold(head + " " + text), fold(head)));
    }

    /** What has all of the words, those with them in the heading first; at most {@value #MOST}. */
    List<View.Found> find(String sought) {
        List<String> words = List.of(fold(sought).strip().split("\\s+"));
        if (words.get(0).isEmpty()) {
            return List.of();
        }
        return entries.stream()
                .filter(entry -> words.stream().allMatch(entry.folded()::contains))
                .sorted(Comparator.comparingInt(entry -> rank(entry, words)))
                .limit(MOST)
                .map(entry -> withExcerpt(entry, words.get(0)))
                .toList();
    }

    private static int rank(Entry entry, List<String> words) {
        boolean inHead = words.stream().allMatch(entry.foldedHead()::contains);
        int kind =
                switch (entry.found().kind()) {
                    case "word" -> 0;
                    case "java" -> 2;
                    default -> 1;
                };
        return (inHead ? 0 : 10) + kind;
    }

    private static View.Found withExcerpt(Entry entry, String word) {
        String text = entry.text();
        int at = Math.max(0, fold(text).indexOf(word));
        int from = Math.max(0, Math.min(at, text.length()) - AROUND);
        int to = Math.min(text.length(), at + AROUND);
        String part =
                (from > 0 ? "… " + text.substring(from, to).replaceFirst("^\\S*\\s", "") : text.substring(from, to));
        String excerpt = to < text.length() ? part.replaceFirst("\\s\\S*$", "") + " …" : part;
        View.Found found = entry.found();
        return new View.Found(found.kind(), found.lesson(), found.step(), found.where(), found.head(), excerpt);
    }

    /** Small letters without accents; each letter stays one, so that places in both are the same. */
    static String fold(String text) {
        StringBuilder folded = new StringBuilder(text.length());
        for (int i = 0; i < text.length(); i++) {
            String letter = Normalizer.normalize(text.substring(i, i + 1), Normalizer.Form.NFD);
            folded.append(Character.toLowerCase(letter.charAt(0)));
        }
        return folded.toString();
    }

    private static String plain(String markdown) {
        return markdown.replaceAll("!?\\[([^\\]]*)]\\([^)]*\\)", "$1")
                .replaceAll("(?m)^#+\\s*|^>\\s?|^[-*] ", "")
                .replaceAll("[*`|]+", "")
                .replaceAll("\\s+", " ")
                .strip();
    }
}
