package loftcoil.runner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * The rules of building and reckoning say the same wherever they stand: {@code building-rules.txt} has each sentence and all its
 * places, and what nobody may say any more.
 */
class BuildingRulesTest {

    private static final Path ROOT = Path.of("..");

    private final List<List<String>> lines = lines();
    private final Map<String, String> texts = texts();

    @Test
    void eachRuleStandsWordForWordInItsPlacesAndInNoOther() {
        Map<String, Set<String>> listed = new TreeMap<>();
        Map<String, Set<String>> found = new TreeMap<>();
        for (List<String> line : lines) {
            if (line.get(0).equals("at")) {
                listed.computeIfAbsent(line.get(1), code -> new TreeSet<>()).add(line.get(2));
            } else if (line.get(0).equals("rule")) {
                texts.forEach((file, text) -> {
                    if (text.contains(plain(line.get(2)))) {
                        found.computeIfAbsent(line.get(1), code -> new TreeSet<>())
                                .add(file);
                    }
                });
            }
        }
        assertTrue(listed.size() >= 9);
        assertEquals(listed, found);
    }

    @Test
    void nothingIsSaidThatARuleForbids() {
        for (List<String> line : lines) {
            if (line.get(0).equals("never")) {
                Pattern words = Pattern.compile(line.get(1));
                texts.forEach((file, text) ->
                        assertTrue(!words.matcher(text).find(), file + " says “" + line.get(1) + "”: " + line.get(2)));
            }
        }
    }

    private static List<List<String>> lines() {
        try (InputStream in = BuildingRulesTest.class.getResourceAsStream("building-rules.txt")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.startsWith("#") && !line.isBlank())
                    .map(line -> List.of(line.split(" \\| ", 3)))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Map<String, String> texts() {
        Map<String, String> texts = new TreeMap<>();
        for (String folder : List.of("lessons", "exercises")) {
            try (Stream<Path> files = Files.walk(ROOT.resolve(folder))) {
                files.filter(file -> file.toString().matches(".*\\.(md|json)"))
                        .forEach(file ->
                                texts.put(ROOT.relativize(file).toString().replace('\\', '/'), plain(read(file))));
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
        assertTrue(texts.size() > 200);
        return texts;
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String plain(String text) {
        return text.replace("**", "")
                .replaceAll("\\s*\\n>?\\s*", " ")
                .replaceAll("\\s+", " ")
                .toLowerCase(Locale.ROOT);
    }
}
