package loftcoil.engine.build;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import loftcoil.engine.design.Changes;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.DesignFields;
import loftcoil.engine.design.DesignJson;
import loftcoil.engine.design.Grounds;
import loftcoil.engine.design.Origin;
import loftcoil.engine.design.SafeBothy;
import loftcoil.engine.design.ToCheck;
import loftcoil.engine.survey.Station;
import loftcoil.engine.words.Measure;
import loftcoil.engine.words.MeasuredText;
import loftcoil.engine.words.Units;
import org.junit.jupiter.api.Test;

/** A sheet says what it rests on, and calls nothing safe that rests on another's house. */
class BorrowedTest {

    private static final Design SAFE = SafeBothy.edited(List.of("/coil/heatKW", "1.0", "/window", "null"));

    @Test
    void withoutABorrowedValueNoDangerIsKnown() {
        BuildSheet sheet = BuildSheet.of(SAFE);

        assertTrue(sheet.buildable());
        assertTrue(
                sheet.verdict().metric().contains("no danger is known"),
                sheet.verdict().metric());
        assertEquals(0, sheet.grounds().borrowed());
    }

    @Test
    void withOneItIsASketchHoweverSafeItLooks() {
        Design borrowed = SafeBothy.merged(DesignJson.write(SAFE), "{\"origin\": {\"site.roomC\": \"borrowed\"}}");
        BuildSheet sheet = BuildSheet.of(borrowed);

        assertEquals(1, sheet.grounds().borrowed(), sheet.grounds().words());
        assertEquals(Map.of(Station.HEATER, 1), Station.borrowed(borrowed));
        assertFalse(sheet.buildable());
        assertEquals(List.of(), sheet.reasons());
        assertFalse(
                sheet.verdict().metric().contains("no danger is known"),
                sheet.verdict().metric());
        assertTrue(
                sheet.verdict().metric().contains("1 of its values"),
                sheet.verdict().metric());
    }

    @Test
    void namesAreNoGroundsAndStandInsAreAssumed() {
        Grounds own = Grounds.of(SAFE);
        Grounds renamed = Grounds.of(Changes.apply(SAFE.borrowed(), "name", "Mine"));

        assertEquals(2 + 2, own.assumed(), "two distances of the flue, air and passage of the fire");
        assertEquals(own.assumed(), assumedOf(SAFE).size(), assumedOf(SAFE).toString());
        assertEquals(0, renamed.yours());
        assertEquals(own.yours(), renamed.borrowed());
    }

    @Test
    void whatIsAssumedStandsWithNumberAndUnit() {
        Map<String, String> told = assumedOf(SAFE).stream()
                .collect(Collectors.toMap(ToCheck::path, value -> value.value().metric()));

        assertEquals("2.20 (1.60 to 3.20)", told.get("fire.excessAir"), told.toString());
        assertEquals("200 cm² (100 to 400 cm²)", told.get("fire.passageCm2"), told.toString());
        assertTrue(told.values().stream().allMatch(value -> value.matches(".*\\d.*")), told.toString());
    }

    @Test
    void whatIsBorrowedStandsWithNumberUnitAndPlace() {
        List<ToCheck> borrowed = ToCheck.of(SAFE.borrowed()).stream()
                .filter(value -> value.origin() == Origin.BORROWED)
                .toList();
        Map<String, ToCheck> byPath = borrowed.stream().collect(Collectors.toMap(ToCheck::path, Function.identity()));

        assertEquals(Grounds.of(SAFE.borrowed()).borrowed(), borrowed.size());
        assertEquals(
                Units.METRIC.words(MeasuredText.of(Measure.litres(SAFE.tank().volumeL()))),
                Units.METRIC.words(byPath.get("tank.volumeL").value()));
        String leg = SAFE.hotLegs().get(0).name();
        assertTrue(byPath.get("hotLegs[0].lengthM").item().contains(leg), leg);
        assertTrue(byPath.get("hotLegs[0].lengthM").value().metric().endsWith(" m"));
        assertTrue(
                Units.US.words(byPath.get("site.monthly.meanAirC").value()).endsWith(" °F"),
                byPath.get("site.monthly.meanAirC").toString());
    }

    private static List<ToCheck> assumedOf(Design design) {
        return ToCheck.of(design).stream()
                .filter(value -> value.origin() == Origin.ASSUMED)
                .toList();
    }

    @Test
    void everyBorrowedValueIsMeasuredSomewhere() {
        Design borrowed = SAFE.borrowed();
        assertEquals(
                Grounds.of(borrowed).borrowed(),
                Station.borrowed(borrowed).values().stream()
                        .mapToInt(Integer::intValue)
                        .sum());
        DesignFields.known().stream()
                .filter(field -> !field.path().equals("name"))
                .forEach(field -> assertTrue(Station.of(field.path()).isPresent(), field.path()));
        assertEquals(Origin.BORROWED, borrowed.origin("site.roomC"));
    }
}
