package loftcoil.engine.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import loftcoil.engine.caution.Caution;
import loftcoil.engine.caution.Severity;
import loftcoil.engine.design.Changes;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.DesignJson;
import loftcoil.engine.design.Example;
import loftcoil.engine.run.ClearSpell;
import loftcoil.engine.run.DullWeek;
import loftcoil.engine.run.YearSpread;
import org.junit.jupiter.api.Test;

/** What a year of mean days hides: clear weeks and dull ones. */
class WeeksTest {

    private static final Design SUN_ALONE = sunAlone("0.7");

    @Test
    void aBothyWithoutFireScaldsAfterAClearWeekThoughNotOnMeanDays() {
        YearSpread year = YearSpread.of(SUN_ALONE);
        assertTrue(
                year.mid().hottestC() < 45, "top of the mean year " + year.mid().hottestC());
        ClearSpell clear = year.weeks().clear().orElseThrow();
        // Clear skies from May to August all the while, by somebody else's reckoning of this tank: 61 degrees, with the
        // usual draws.
        assertTrue(clear.hottestTankC() > 58 && clear.hottestTankC() < 75, clear.toString());
        assertTrue(clear.month() >= 5 && clear.month() <= 8, clear.toString());
        Caution scald = caution(SUN_ALONE, "LC-SCALD").orElseThrow();
        assertEquals(Severity.DANGER, scald.severity());
        assertTrue(scald.text().startsWith("After 7 clear days in "), scald.text());
        String legionella = caution(SUN_ALONE, "LC-LEGIONELLA").orElseThrow().text();
        assertTrue(legionella.contains("A clear week brings its hottest water to "), legionella);
    }

    @Test
    void aLargerPaneBoilsTheTankBySunAlone() {
        Design large = sunAlone("1.1");
        assertTrue(YearSpread.of(large).mid().hottestC() < 75);
        String boils = caution(large, "LC-BOIL-TANK").orElseThrow().text();
        assertTrue(boils.startsWith("After 7 clear days in "), boils);
        assertFalse(caution(sunAlone("0.3"), "LC-SCALD").isPresent());
    }

    @Test
    void southOfTheEquatorTheWeekIsAsHotHalfAYearLater() {
        ClearSpell north = YearSpread.of(SUN_ALONE).weeks().clear().orElseThrow();
        ClearSpell south = YearSpread.of(mirrored(SUN_ALONE)).weeks().clear().orElseThrow();
        assertEquals((north.month() + 5) % 12 + 1, south.month());
        assertEquals(north.hottestTankC(), south.hottestTankC(), 3);
    }

    @Test
    void aDullWeekIsToldWhereItHalvesTheWaterThatMeanDaysWarm() {
        DullWeek dull = YearSpread.of(SUN_ALONE).weeks().dull().orElseThrow();
        assertTrue(dull.shortShare() > dull.meanShortShare() + 0.15, dull.toString());
        // Half the sun is missing; what the tank held from better days makes up for some, lower losses for more.
        assertTrue(dull.ofTheDullness() < 0.5, dull.toString());
        Caution told = caution(SUN_ALONE, "LC-DULL-WEEK").orElseThrow();
        assertEquals(Severity.NOTE, told.severity());
        assertTrue(told.text().contains("Nothing else heats this tank"), told.text());
        assertTrue(caution(Example.orchardBothy(), "LC-DULL-WEEK")
                .orElseThrow()
                .text()
                .contains("Light the fire"));
    }

    @Test
    void theFiguresStandInTheJson() throws JsonProcessingException {
        JsonNode json = new ObjectMapper().readTree(SheetJson.write(Sheet.whole(SUN_ALONE, Sheet.USUAL_TANK_C)));
        ClearSpell clear = YearSpread.of(SUN_ALONE).weeks().clear().orElseThrow();
        assertEquals(clear.hottestTankC(), json.at("/spell/hottestTankC").doubleValue());
        assertEquals(7, json.at("/spell/days").intValue());
        assertTrue(json.at("/dull/shortShare").doubleValue() > 0.5);
        assertEquals(-16.5, json.at("/frost/nightC").doubleValue());
    }

    @Test
    void aFireAllYearOrNoDrawsAtAllNeedNoSun() {
        Design lit = Changes.apply(Example.orchardBothy(), "fire.months", "all year");
        assertFalse(caution(lit, "LC-DULL-WEEK").isPresent());
        assertTrue(YearSpread.of(SUN_ALONE.withUse(List.of())).weeks().dull().isEmpty());
    }

    private static Optional<Caution> caution(Design design, String code) {
        return SafetyVerdict.whole(design).cautions().stream()
                .filter(caution -> caution.code().equals(code))
                .findFirst();
    }

    /** The bothy with a cold coil and good reflectors. */
    private static Design sunAlone(String areaM2) {
        ObjectNode root = tree(Example.orchardBothyJson());
        root.remove("fire");
        ((ObjectNode) root.at("/coil")).put("heatKW", 0);
        ((ObjectNode) root.at("/window")).put("reflectorShare", 0.95);
        return Changes.apply(DesignJson.read(root.toString()), "window.areaM2", areaM2);
    }

    /** The same place as far south, its seasons turned round, the panes to the north. */
    private static Design mirrored(Design design) {
        ObjectNode root = tree(DesignJson.write(design));
        ((ObjectNode) root.at("/site"))
                .put("latitudeDeg", -root.at("/site/latitudeDeg").doubleValue());
        ((ObjectNode) root.at("/window")).put("azimuthDeg", 0);
        for (JsonNode months : root.at("/site/monthly")) {
            List<JsonNode> turned = new ArrayList<>();
            months.forEach(turned::add);
            Collections.rotate(turned, 6);
            ((ArrayNode) months).removeAll().addAll(turned);
        }
        return DesignJson.read(root.toString());
    }

    private static ObjectNode tree(String json) {
        try {
            return (ObjectNode) new ObjectMapper().readTree(json);
        } catch (JsonProcessingException unreadable) {
            throw new IllegalStateException(unreadable);
        }
    }
}
