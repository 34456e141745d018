package loftcoil.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every page on the models says what is left out and how much that may matter. */
class ModelPagesTest {

    private static final Path MODELS = Path.of("models");

    /** Pages that hold no model: the list of the pages, and the fields of a design. */
    private static final Set<String> NO_MODELS = Set.of("README.md", "design-fields.md");

    private static final String HEADING = "## Left out, and how much it may matter";

    private static final int LEAST_ROWS = 3;

    static List<Path> pages() throws IOException {
        try (Stream<Path> files = Files.list(MODELS)) {
            return files.filter(file -> file.toString().endsWith(".md")
                            && !NO_MODELS.contains(file.getFileName().toString()))
                    .sorted()
                    .toList();
        }
    }

    @ParameterizedTest
    @MethodSource("pages")
    void whatIsLeftOutIsToldWithFigures(Path page) throws IOException {
        List<String> rows = Files.readAllLines(page).stream()
                .dropWhile(line -> !line.equals(HEADING))
                .skip(1)
                .takeWhile(line -> !line.startsWith("## "))
                .filter(line -> line.startsWith("| "))
                .skip(1)
                .toList();
        assertTrue(rows.size() >= LEAST_ROWS, page + " lacks \"" + HEADING + "\" with a table of what is left out");
        List<String> mute = rows.stream()
                .filter(row -> !howMuch(row).matches(".*(\\d|not known|a third|a quarter|all of it).*"))
                .toList();
        assertEquals(List.of(), mute, page + ": how much?");
        assertTrue(
                rows.stream().filter(row -> howMuch(row).matches(".*\\d.*")).count() * 2 > rows.size(),
                page.toString());
    }

    @Test
    void thePagesAreThoseOfTheList() throws IOException {
        String list = Files.readString(MODELS.resolve("README.md"));
        Set<String> listed = Pattern.compile("\\]\\(([a-z-]+\\.md)\\)")
                .matcher(list)
                .results()
                .map(link -> link.group(1))
                .filter(name -> !NO_MODELS.contains(name))
                .collect(Collectors.toCollection(TreeSet::new));
        Set<String> there = pages().stream()
                .map(page -> page.getFileName().toString())
                .collect(Collectors.toCollection(TreeSet::new));
        assertEquals(there, listed);
    }

    private static String howMuch(String row) {
        String[] cells = row.split("\\|", -1);
        return cells.length > 2 ? cells[2] : "";
    }
}
