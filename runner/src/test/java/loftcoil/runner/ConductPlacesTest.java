package loftcoil.runner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import loftcoil.engine.caution.Conduct;
import loftcoil.engine.design.Example;
import loftcoil.engine.sheet.FirstCharge;
import org.junit.jupiter.api.Test;

/**
 * The table of conduct and every place of the course where it stands. {@code conduct-places.txt} lists the places; a lesson has the
 * rule word for word, an exercise at least what to do. Whatever else in lessons and exercises sounds like advice for these cases is
 * listed there too, with the reason why it may stand.
 */
class ConductPlacesTest {

    private static final Path ROOT = Path.of("..");

    /** Each lesson of the course that has to have rules of its own. */
    private static final Set<String> OWN_RULES = Set.of("06", "07", "08", "15", "17", "18");

    /** Words in which somebody would give such advice. */
    private static final Pattern ADVICE = Pattern.compile("(?i)\\b(everybody (out|away|into)|get (everybody )?out\\b"
            + "|out of the (dwelling|house|room)|no more wood|let(s|ting)? (it|the fire) (die|burn itself out)"
            + "|rak(e|es|ed|ing)\\b|burning (wood|logs?|fuel)|shut the (fire's )?air|shut the air|starve|open the (stove|damper)"
            + "|dampers?\\b|(first|light|lights|begin with|start with|start again with) (a )?small fire|light (it )?again\\b|relight"
            + "|call (for )?help)");

    private final List<Line> lines = listed();
    private final Map<String, String> texts = texts();

    /**
     * A line of the list.
     *
     * @param what code of a rule, {@code frost}, or {@code besides} for words that are no rule
     * @param where file of lesson or exercise
     * @param words the words that may stand there; empty for a rule. A fourth cell says why
     */
    private record Line(String what, String where, String words) {}

    @Test
    void eachPlaceHasTheRuleWordForWord() {
        Set<String> departed = new TreeSet<>();
        for (Line line : lines) {
            if (!line.what().equals("besides")) {
                String text = texts.getOrDefault(line.where(), "");
                if (!text.contains(sought(line.what(), line.where()))) {
                    departed.add(line.where() + " departs from: " + sought(line.what(), line.where()));
                }
            }
        }
        assertEquals(Set.of(), departed);
    }

    @Test
    void noPlaceIsMissingFromTheList() {
        Set<String> found = new TreeSet<>();
        for (String where : texts.keySet()) {
            for (String rule : rules()) {
                String act = rule.equals("frost")
                        ? plain(Conduct.afterFrost().metric())
                        : plain(conduct(rule).act().metric());
                if (text(where).contains(act)) {
                    found.add(rule + " | " + where);
                }
            }
        }
        // A place that has the whole of going back in has its last sentence too.
        found.removeIf(place -> place.startsWith("frost | ") && found.contains(place.replace("frost", "back-in")));
        Set<String> kept = lines.stream()
                .filter(line -> !line.what().equals("besides"))
                .map(line -> line.what() + " | " + line.where())
                .collect(Collectors.toCollection(TreeSet::new));
        assertEquals(found, kept);
    }

    @Test
    void eachLessonThatDealsWithThemHasRules() {
        Set<String> lessons = lines.stream()
                .filter(line -> line.where().startsWith("lessons/"))
                .map(line -> line.where().replaceAll("lessons/(..).*", "$1"))
                .collect(Collectors.toSet());
        assertTrue(lessons.containsAll(OWN_RULES), lessons.toString());
        Set<String> inFirstFire = lines.stream()
                .filter(line -> line.where().startsWith("lessons/17"))
                .map(Line::what)
                .collect(Collectors.toSet());
        for (Conduct rule : Conduct.values()) {
            assertTrue(inFirstFire.contains(rule.code()), rule.code());
        }
        String firstFire = text("lessons/17-first-fire-and-after.md");
        assertTrue(firstFire.contains(plain(Conduct.worth().metric())));
    }

    /** A second wording is how two rules begin to part. */
    @Test
    void nothingElseGivesSuchAdvice() {
        Set<Line> needed = new HashSet<>();
        Set<String> strange = new TreeSet<>();
        for (String where : texts.keySet()) {
            String rest = text(where);
            for (String sentence : sentences()) {
                rest = rest.replace(sentence, "");
            }
            for (Line line : lines) {
                if (line.what().equals("besides") && line.where().equals(where) && rest.contains(line.words())) {
                    rest = rest.replace(line.words(), "");
                    needed.add(line);
                }
            }
            Matcher advice = ADVICE.matcher(rest);
            while (advice.find()) {
                strange.add(where + ": …"
                        + rest.substring(Math.max(0, advice.start() - 60), Math.min(rest.length(), advice.end() + 60)));
            }
        }
        assertEquals(Set.of(), strange);
        assertEquals(
                Set.of(),
                lines.stream()
                        .filter(line -> line.what().equals("besides") && !needed.contains(line))
                        .collect(Collectors.toSet()),
                "no longer there");
    }

    /** The charge that lesson 15 names is that of the bothy, rounded as the build sheet rounds it. */
    @Test
    void theLessonNamesTheChargeOfTheBothy() {
        double grams = FirstCharge.of(Example.orchardBothy()).chargeG();
        assertTrue(
                text("lessons/17-first-fire-and-after.md")
                        .contains("in the bothy " + Math.round(Math.floor(grams / 5) * 5) + " g"),
                grams + " g");
    }

    private static String sought(String rule, String where) {
        if (rule.equals("frost")) {
            return plain(Conduct.afterFrost().metric());
        }
        Conduct conduct = conduct(rule);
        return plain((where.startsWith("lessons/") ? conduct.rule() : conduct.act()).metric());
    }

    private static Conduct conduct(String code) {
        return Stream.of(Conduct.values())
                .filter(rule -> rule.code().equals(code))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no rule " + code));
    }

    private static List<String> rules() {
        return Stream.concat(Stream.of(Conduct.values()).map(Conduct::code), Stream.of("frost"))
                .toList();
    }

    private static List<String> sentences() {
        return Stream.of(Conduct.values())
                .flatMap(rule -> Stream.of(rule.act().metric().split("(?<=\\.) ")))
                .map(ConductPlacesTest::plain)
                .toList();
    }

    private String text(String where) {
        return texts.getOrDefault(where, "");
    }

    /** Words alone: no marks of quotation, weight or line ends. */
    private static String plain(String markdown) {
        return markdown.replaceAll("(?m)^\\s*>", " ")
                .replace("*", "")
                .replaceAll("\\s+", " ")
                .strip();
    }

    private static Map<String, String> texts() {
        Map<String, String> texts = new TreeMap<>();
        try (Stream<Path> lessons = Files.list(ROOT.resolve("lessons"));
                Stream<Path> exercises = Files.walk(ROOT.resolve("exercises"))) {
            for (Path file :
                    lessons.filter(path -> path.toString().endsWith(".md")).toList()) {
                texts.put(name(file), plain(Files.readString(file)));
            }
            ObjectMapper json = new ObjectMapper();
            for (Path file :
                    exercises.filter(path -> path.toString().endsWith(".json")).toList()) {
                StringBuilder all = new StringBuilder();
                strings(json.readTree(file.toFile()), all);
                texts.put(name(file), plain(all.toString()));
            }
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
        assertTrue(texts.size() > 200, "only " + texts.keySet());
        return texts;
    }

    private static void strings(JsonNode node, StringBuilder all) {
        if (node.isTextual()) {
            all.append(node.textValue()).append(" \n");
        }
        node.forEach(part -> strings(part, all));
    }

    private static String name(Path file) {
        return ROOT.relativize(file).toString().replace('\\', '/');
    }

    private static List<Line> listed() {
        try (InputStream in = ConductPlacesTest.class.getResourceAsStream("conduct-places.txt")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.isBlank() && !line.startsWith("#"))
                    .map(line -> line.split(" \\| ", -1))
                    .map(cells ->
                            new Line(cells[0].strip(), cells[1].strip(), cells.length > 2 ? cells[2].strip() : ""))
                    .toList();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
