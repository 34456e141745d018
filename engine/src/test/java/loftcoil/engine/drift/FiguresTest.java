package loftcoil.engine.drift;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import loftcoil.engine.sheet.Figure;
import loftcoil.engine.sheet.FigureGroup;
import loftcoil.engine.sheet.Figures;
import loftcoil.engine.sheet.Sheet;
import loftcoil.engine.sheet.SheetFigure;
import loftcoil.engine.sheet.SheetJson;
import loftcoil.engine.sheet.SheetText;
import loftcoil.engine.study.Comparison;
import loftcoil.engine.study.Row;
import loftcoil.engine.words.Units;
import org.junit.jupiter.api.Test;

/** Every figure of the one list stands in text, JSON and comparison, under one name and with digits a person can use. */
class FiguresTest {

    /** Its heat is worked out from the fire, so it has every group of figures. */
    private static final Sheet SHEET = Sheet.whole(KeptDesigns.all().get("by-the-fire"), Sheet.USUAL_TANK_C);

    private static final List<SheetFigure> ALL = Figures.of(SHEET);
    private static final Pattern EXPONENT = Pattern.compile("[0-9][eE][-+]?[0-9]");
    private static final Pattern DEEPER = Pattern.compile("[.\\[\\]]+");

    @Test
    void everyGroupHasFigures() {
        assertEquals(
                Set.of(FigureGroup.values()),
                ALL.stream().map(SheetFigure::group).collect(Collectors.toSet()));
    }

    @Test
    void noKeyTwiceAndOneLabelForEachQuantity() {
        Set<String> keys = new HashSet<>();
        Map<String, Figure<?>> labels = new HashMap<>();
        for (SheetFigure figure : ALL) {
            assertTrue(keys.add(figure.key()), figure.key());
            assertFalse(figure.figure().label().isBlank(), figure.key());
            Figure<?> known = labels.putIfAbsent(figure.figure().label(), figure.figure());
            assertTrue(known == null || known.equals(figure.figure()), "two are called " + figure.label());
        }
    }

    @Test
    void everyFigureStandsInTheJson() throws JsonProcessingException {
        JsonNode json = new ObjectMapper().readTree(SheetJson.write(SHEET));
        for (SheetFigure figure : ALL) {
            JsonNode node = json;
            for (String step : DEEPER.split(figure.key(), -1)) {
                node = deeper(node, step);
            }
            assertTrue(node.isNumber(), figure.key());
            assertEquals(figure.value(), node.doubleValue(), figure.key());
        }
    }

    private static JsonNode deeper(JsonNode node, String step) {
        if (!node.isArray()) {
            return node.path(step);
        }
        for (JsonNode item : node) {
            if (item.path("name").asText().equals(step)) {
                return item;
            }
        }
        return node.path(Integer.parseInt(step));
    }

    @Test
    void everyFigureToReadStandsInTheText() {
        String text = String.join("\n", SheetText.lines(SHEET));
        for (SheetFigure figure : Figures.toRead(SHEET)) {
            boolean column = figure.group() == FigureGroup.MONTHS;
            assertTrue(column || text.contains(figure.figure().label()), figure.key());
            assertTrue(
                    (column && figure.figure().head().isEmpty())
                            || text.contains(figure.measure().number()),
                    figure.key() + " " + figure.measure());
        }
        assertFalse(EXPONENT.matcher(text).find(), text);
    }

    @Test
    void everyFigureStandsInAComparison() {
        List<Row> rows = Comparison.of(SHEET, SHEET).rows();
        assertEquals(
                ALL.stream().map(SheetFigure::key).collect(Collectors.toSet()),
                rows.stream().map(Row::key).collect(Collectors.toSet()));
        for (Row row : rows) {
            String shown = row.shownBefore(Units.METRIC) + " " + row.shownAfter(Units.METRIC) + " "
                    + row.shownDifference(Units.METRIC);
            assertFalse(EXPONENT.matcher(shown).find() || shown.contains("NaN"), row.toString());
        }
    }

    @Test
    void theFewThatAreShownFirstAreOfTheDesignItself() {
        List<String> first =
                ALL.stream().filter(SheetFigure::main).map(SheetFigure::key).toList();
        assertTrue(first.contains("loop.boilMarginK") && first.contains("year.woodKg"), first.toString());
        assertTrue(first.size() <= 20, first.toString());
        assertFalse(first.stream().anyMatch(key -> key.contains(".low.") || key.contains("[")), first.toString());
    }
}
