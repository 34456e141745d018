package loftcoil.runner.course;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import loftcoil.runner.exercise.About;
import loftcoil.runner.exercise.Code;
import loftcoil.runner.exercise.Exercise;
import loftcoil.runner.lesson.Lesson;
import loftcoil.runner.lesson.Step;

/**
 * What a question needs, and where the course has shown it before.
 *
 * @param lessonId the lesson that asks it
 * @param exercise the exercise that is asked
 * @param ideas the words of the glossary its text uses, each with the lesson that explains it
 * @param names the Java names it needs, each with the lesson whose snippet has it first, blank where none before it has; none but for a
 *     question in Java
 * @param shown the sum with other numbers, or the plot, that the exercise points to; empty where it points to none or to nothing
 */
public record Taught(
        String lessonId,
        Exercise exercise,
        SortedMap<String, String> ideas,
        SortedMap<String, String> names,
        Optional<Shown> shown) {

    /**
     * Where something stands that was shown.
     *
     * @param lessonId the lesson it stands in
     * @param words the paragraph; for a plot the Java that draws it
     * @param snippet whether it is a snippet
     */
    public record Shown(String lessonId, String words, boolean snippet) {}

    /** A fence that is no snippet shows the lines that were missing; so does what stands between strokes in a line. */
    private static final Pattern FENCED = Pattern.compile("```\\w*\\n(.*?)```", Pattern.DOTALL);

    private static final Pattern NAME = Pattern.compile("\\b[A-Za-z_]\\w*");
    private static final Pattern NO_NAMES = Pattern.compile("//[^\\n]*|\"(?:[^\"\\\\]|\\\\.)*\"|\\b\\d[\\w.]*");
    /** Words of the language, and what a calculator has a key for. */
    private static final Set<String> OF_JAVA =
            Set.of(("abs boolean break cbrt continue double else false for if int long max min"
                            + " new null PI pow return sqrt true var void while")
                    .split(" "));

    /** Every question of a course, in reading order. */
    public static List<Taught> in(Course course) {
        List<Taught> all = new ArrayList<>();
        List<Shown> before = new ArrayList<>();
        for (Lesson lesson : course.lessons()) {
            for (Step step : lesson.steps()) {
                if (step instanceof Step.Prose prose) {
                    paragraphs(prose.markdown()).forEach(words -> before.add(new Shown(lesson.id(), words, false)));
                } else if (step instanceof Step.Snippet snippet) {
                    before.add(new Shown(lesson.id(), snippet.source(), true));
                    before.add(new Shown(lesson.id(), snippet.id(), true));
                } else if (step instanceof Step.Question question && question.asked() != Step.Asked.AGAIN) {
                    all.add(of(course, lesson.id(), course.exercise(question.exercise()), before));
                }
            }
        }
        return all;
    }

    private static Taught of(Course course, String lessonId, Exercise exercise, List<Shown> before) {
        SortedMap<String, String> names = new TreeMap<>();
        if (exercise instanceof Code code) {
            names(code).forEach(name -> names.put(name, ""));
            before.stream().filter(Shown::snippet).forEach(shown -> namesIn(shown.words())
                    .forEach(name -> names.replace(name, "", shown.lessonId())));
        }
        return new Taught(lessonId, exercise, ideas(course, exercise.about()), names, shown(exercise, before));
    }

    /** Those of the Java names that no snippet before the question has. */
    public Set<String> untaught() {
        return names.entrySet().stream()
                .filter(name -> name.getValue().isEmpty())
                .map(Map.Entry::getKey)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static SortedMap<String, String> ideas(Course course, About about) {
        SortedMap<String, String> ideas = new TreeMap<>();
        String text = " " + about.text().toLowerCase(Locale.ROOT) + " ";
        for (Term term : course.terms()) {
            String word = term.name().toLowerCase(Locale.ROOT).replaceAll(" \\(.*\\)$", "");
            if (Pattern.compile("\\b" + Pattern.quote(word) + "(?:s|es)?\\b")
                    .matcher(text)
                    .find()) {
                ideas.put(term.name(), term.lessonId());
            }
        }
        return ideas;
    }

    /** What the lines it begins with and those of its solution name, but for what they declare themselves. */
    private static Set<String> names(Code code) {
        StringBuilder java = new StringBuilder(code.starter());
        Matcher fenced = FENCED.matcher(code.about().solution().text());
        while (fenced.find()) {
            java.append('\n').append(fenced.group(1));
        }
        Set<String> names = namesIn(java.toString());
        names.removeAll(declaredIn(java.toString()));
        names.removeAll(code.about().vary().keySet());
        return names;
    }

    private static Set<String> namesIn(String java) {
        Set<String> names = new TreeSet<>();
        NAME.matcher(NO_NAMES.matcher(java).replaceAll(" ")).results().forEach(found -> names.add(found.group()));
        names.removeAll(OF_JAVA);
        return names;
    }

    private static Set<String> declaredIn(String java) {
        Set<String> declared = new TreeSet<>();
        Pattern.compile("\\b[\\w>\\]]+\\s+([a-z]\\w*)\\s*[=:]")
                .matcher(java)
                .results()
                .forEach(found -> declared.add(found.group(1)));
        return declared;
    }

    private static Optional<Shown> shown(Exercise exercise, List<Shown> before) {
        String wanted = exercise.about().shown();
        if (wanted.isEmpty()) {
            return Optional.empty();
        }
        return before.stream()
                .filter(shown -> shown.snippet()
                        ? shown.words().equals(wanted)
                        : shown.words().startsWith(wanted))
                .findFirst();
    }

    /** Paragraphs with their white space made even, a numbered list counted to what stands before it. */
    private static List<String> paragraphs(String markdown) {
        List<String> all = new ArrayList<>();
        for (String paragraph : markdown.strip().split("\\n\\s*\\n", -1)) {
            String even = paragraph.strip().replaceAll("\\s+", " ");
            boolean listed = even.matches("\\d+\\. .*") && !all.isEmpty();
            if (listed) {
                all.set(all.size() - 1, all.get(all.size() - 1) + " " + even);
            } else {
                all.add(even);
            }
        }
        return all;
    }
}
