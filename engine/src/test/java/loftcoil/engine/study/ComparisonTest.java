package loftcoil.engine.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import loftcoil.engine.caution.Caution;
import loftcoil.engine.design.Changes;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.Example;
import loftcoil.engine.design.Tap;
import loftcoil.engine.sheet.FigureGroup;
import loftcoil.engine.sheet.Figures;
import loftcoil.engine.sheet.Sheet;
import loftcoil.engine.sheet.SheetJson;
import org.junit.jupiter.api.Test;

class ComparisonTest {

    private static final Design BOTHY = Example.orchardBothy();
    private static final Design REBUILT = BOTHY.withTankBaseM(2.5).withLoopTube("EN1057 28x0.9");

    /** Numbers of the JSON that are asked for and not computed, or stand there under an older name too. */
    private static final List<String> ASKED =
            List.of("loop.tankC", "month", "boilingMin", "verdict.borrowed", "verdict.assumed", "verdict.yours");

    @Test
    void everyNumberOfTheSheetIsARowUnderItsOwnName() throws JsonProcessingException {
        Sheet sheet = Sheet.whole(BOTHY, Sheet.USUAL_TANK_C);
        Map<String, Double> wanted = new TreeMap<>();
        JsonNode json = new ObjectMapper().readTree(SheetJson.write(sheet));
        numbers(json, "", wanted);
        wanted.keySet().removeIf(key -> ASKED.stream().anyMatch(key::endsWith));
        // Two designs are not tried in the same starts; what their starts come to is a row.
        wanted.keySet().removeIf(key -> key.startsWith("starts["));

        Map<String, Double> rows = new TreeMap<>();
        Comparison.of(sheet, sheet)
                .rows()
                .forEach(row -> rows.put(row.key(), row.after().orElseThrow()));

        assertTrue(wanted.size() > 150, "only " + wanted.size());
        assertEquals(wanted, rows);
    }

    private static void numbers(JsonNode node, String path, Map<String, Double> found) {
        if (node.isNumber()) {
            found.put(path, node.doubleValue());
        }
        for (int i = 0; i < (node.isArray() ? node.size() : 0); i++) {
            String name = node.get(i).path("name").asText(Integer.toString(i));
            numbers(node.get(i), path + "[" + name + "]", found);
        }
        node.properties()
                .forEach(field -> numbers(
                        field.getValue(), path.isEmpty() ? field.getKey() : path + "." + field.getKey(), found));
    }

    @Test
    void everyRowHasBothSheetsOwnValues() {
        Comparison compared = Comparison.of(BOTHY, REBUILT);
        Row flow = row(compared, "loop.flowLPerMin");
        assertEquals(Sheet.of(BOTHY).loop().flowLPerMin(), flow.before().orElseThrow());
        assertEquals(Sheet.of(REBUILT).loop().flowLPerMin(), flow.after().orElseThrow());
        assertEquals(Trend.BETTER, flow.turn());
        assertEquals("L/min", flow.unit());
        assertEquals(Trend.DIFFERENT, row(compared, "loop.drivePa").turn());
        assertEquals(Trend.SAME, row(compared, "tank.fullMassKg").turn());
        assertFalse(compared.changed().contains(row(compared, "tank.fullMassKg")));
    }

    @Test
    void whereLessIsBetterAFallIsBetter() {
        Row row = new Row("x", FigureGroup.YEAR, "wood", Figures.WOOD, OptionalDouble.of(900), OptionalDouble.of(800));
        assertEquals(Trend.BETTER, row.turn());
        assertEquals(-100, row.difference().orElseThrow());
    }

    @Test
    void aFigureOfOneDesignAloneIsNewOrGone() {
        Design withoutPanes = withoutWindow(BOTHY);
        assertEquals(
                Trend.GONE,
                row(Comparison.of(BOTHY, withoutPanes), "window.uValueWPerM2K").turn());
        Row gained = row(Comparison.of(withoutPanes, BOTHY), "window.uValueWPerM2K");
        assertEquals(Trend.NEW, gained.turn());
        assertTrue(gained.difference().isEmpty());
        assertTrue(gained.before().isEmpty());
    }

    @Test
    void aTapIsComparedWithItselfWhereverItStandsInTheList() {
        List<Tap> turned = new ArrayList<>(BOTHY.taps());
        Collections.reverse(turned);
        Design same = withTaps(BOTHY, turned);
        assertTrue(Comparison.of(BOTHY, same).changed().isEmpty());
    }

    @Test
    void cautionsThatComeAndGoAreNamed() {
        Design valved = Changes.apply(BOTHY, "coldLegs[0].fittings.gate", "1");
        Comparison compared = Comparison.of(BOTHY, valved);
        Comparison back = Comparison.of(valved, BOTHY);
        assertEquals(
                List.of("LC-VALVE"),
                compared.cautionsRaised().stream().map(Caution::code).toList());
        assertEquals(compared.cautionsRaised(), back.cautionsSettled());
        assertEquals(compared.cautionsSettled(), back.cautionsRaised());
    }

    private static Row row(Comparison compared, String key) {
        return compared.rows().stream()
                .filter(row -> row.key().equals(key))
                .findFirst()
                .orElseThrow();
    }

    private static Design withoutWindow(Design d) {
        return new Design(
                d.name(),
                d.site(),
                d.tank(),
                d.coil(),
                d.fire(),
                d.coldLegs(),
                d.hotLegs(),
                Optional.empty(),
                d.taps(),
                d.use(),
                d.safety(),
                d.notes());
    }

    private static Design withTaps(Design d, List<Tap> taps) {
        return new Design(
                d.name(),
                d.site(),
                d.tank(),
                d.coil(),
                d.fire(),
                d.coldLegs(),
                d.hotLegs(),
                d.window(),
                taps,
                d.use(),
                d.safety(),
                d.notes());
    }

    @Test
    void aRebuildThatIsStoppedKeepsWhatIsKnown() {
        List<NamedValue> changes = List.of(new NamedValue("tank.baseM", "2.6"), new NamedValue("fire.litForH", "3"));
        List<Integer> told = new ArrayList<>();
        ProgressListener afterTwo = new ProgressListener() {
            @Override
            public void done(int done, int of) {
                told.add(done * 10 + of);
            }

            @Override
            public boolean cancelled() {
                return told.size() >= 2;
            }
        };
        SearchOutcome<Rebuild> stopped = Rebuild.whole(Example.orchardBothy(), changes, afterTwo);
        assertEquals(List.of(14, 24), told);
        assertTrue(stopped instanceof SearchOutcome.Cancelled<Rebuild>);
        assertEquals(List.of(), stopped.result().effects());
        assertTrue(stopped.result()
                .together()
                .comparison()
                .orElseThrow()
                .after()
                .year()
                .isPresent());

        SearchOutcome<Rebuild> atOnce = Rebuild.whole(Example.orchardBothy(), changes, new ProgressListener() {
            @Override
            public boolean cancelled() {
                return true;
            }
        });
        assertEquals(2, atOnce.result().effects().size());
        assertTrue(atOnce.result()
                .together()
                .comparison()
                .orElseThrow()
                .after()
                .year()
                .isEmpty());
    }
}
