package loftcoil.runner.course;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What a learner reads is words: no code of a caution, and no name of the program but where it is Java that the lesson shows. */
class ReadTextTest {

    private static final Path LESSONS = Path.of("..", "lessons");
    private static final Path EXERCISES = Path.of("..", "exercises");

    private static final Pattern CAUTION_CODE = Pattern.compile("\\bLC-[A-Z]+");
    private static final Pattern INNER_CAPITAL =
            Pattern.compile("\\b(?:[a-z]+[A-Z][A-Za-z]*|[A-Z][a-z]+[A-Z][A-Za-z]+)\\b");
    private static final Pattern NAME = Pattern.compile("[A-Za-z_]\\w*");

    /** Signs of units, and of how sour water is. */
    private static final Set<String> UNITS = Set.of("kW", "kWh", "kN", "hPa", "kPa", "kJ", "mL", "pH");

    /** Keys of an exercise whose values are Java, names of the program, or where something is. */
    private static final Set<String> NOT_READ =
            Set.of("java", "starter", "lines", "patch", "changes", "change", "vary", "unit", "exercise", "options");

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<Path> files(Path folder, String ending) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(file -> file.toString().endsWith(ending)).sorted().toList();
        }
    }

    @Test
    void noCodeStandsInALesson() throws IOException {
        List<String> found = new ArrayList<>();
        List<Path> lessons = files(LESSONS, ".md");
        assertTrue(lessons.size() > 20, lessons.size() + " files");
        for (Path lesson : lessons) {
            String whole = read(lesson).replaceFirst("(?s)\\A---.*?---\\n", "");
            Set<String> java = words(String.join("\n", fences(whole)));
            String prose = whole.replaceAll("(?s)```.*?```", "").replaceAll("\\]\\([^)]*\\)", "]");
            look(lesson.getFileName().toString(), prose, java, found);
        }
        assertEquals(List.of(), found);
    }

    @Test
    void noCodeStandsInAnExerciseOrTheRefresher() throws IOException {
        List<String> found = new ArrayList<>();
        List<Path> exercises = files(EXERCISES, ".json");
        assertTrue(exercises.size() > 200, exercises.size() + " files");
        Set<String> lessons = words(lessonsJava());
        for (Path exercise : exercises) {
            JsonNode root = new ObjectMapper().readTree(read(exercise));
            Set<String> own =
                    words("" + root.findValues("java") + root.findValues("starter") + root.findValues("lines"));
            own.addAll(lessons);
            walk(EXERCISES.relativize(exercise).toString(), root, own, found);
        }
        assertEquals(List.of(), found);
    }

    @Test
    void aCodeInTextIsFound() {
        List<String> found = new ArrayList<>();
        look(
                "text",
                "`LC-START` is raised; see BesideFlue and `tankBaseM`, 2 kWh, `heights`.",
                words("double heights;"),
                found);
        assertEquals(3, found.size(), found.toString());
    }

    private static String lessonsJava() throws IOException {
        StringBuilder java = new StringBuilder();
        for (Path lesson : files(LESSONS, ".md")) {
            fences(read(lesson)).forEach(java::append);
        }
        return java.toString();
    }

    private static List<String> fences(String markdown) {
        return Pattern.compile("(?s)```java.*?```")
                .matcher(markdown)
                .results()
                .map(MatchResult::group)
                .toList();
    }

    private static void walk(String where, JsonNode node, Set<String> java, List<String> found) {
        if (node.isTextual()) {
            look(
                    where,
                    node.textValue().replaceAll("(?s)```.*?```", "").replaceAll("\\{\\{.*?\\}\\}", ""),
                    java,
                    found);
        } else if (node.isArray()) {
            node.forEach(each -> walk(where, each, java, found));
        } else {
            node.properties().stream()
                    .filter(field -> !NOT_READ.contains(field.getKey()))
                    .forEach(field -> walk(where + " " + field.getKey(), field.getValue(), java, found));
        }
    }

    private static void look(String where, String text, Set<String> java, List<String> found) {
        CAUTION_CODE.matcher(text).results().forEach(code -> found.add(where + ": " + code.group()));
        for (MatchResult span :
                Pattern.compile("`([^`]+)`").matcher(text).results().toList()) {
            names(span.group(1))
                    .filter(name -> !java.contains(name))
                    .forEach(name -> found.add(where + ": `" + name + "`, which no Java shows"));
        }
        names(text.replaceAll("`[^`]+`", "")).forEach(name -> found.add(where + ": " + name));
    }

    private static Set<String> words(String java) {
        return NAME.matcher(java).results().map(MatchResult::group).collect(Collectors.toCollection(HashSet::new));
    }

    private static Stream<String> names(String text) {
        return INNER_CAPITAL.matcher(text).results().map(MatchResult::group).filter(name -> !UNITS.contains(name));
    }
}
