package loftcoil.engine.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import loftcoil.engine.caution.Caution;
import loftcoil.engine.caution.CautionKind;
import loftcoil.engine.caution.Severity;
import loftcoil.engine.design.Absence;
import loftcoil.engine.design.Changes;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.DesignJson;
import loftcoil.engine.design.Dwelling;
import loftcoil.engine.design.Example;
import loftcoil.engine.run.YearRun;
import loftcoil.engine.survey.Doubts;
import loftcoil.engine.words.Units;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** South of the equator July is winter and the noon sun stands in the north. */
class SouthTest {

    private static final Design BOTHY = Example.orchardBothy();

    /** The bothy at 46° south, its year half a year on, its panes to the north. */
    private static final Design MIRRORED = mirrored();

    private static Design mirrored() {
        Design south = Changes.apply(BOTHY, "site.latitudeDeg", "-46.2");
        south = Changes.apply(south, "window.azimuthDeg", "0");
        south = Changes.apply(south, "fire.months", "April to October");
        south = Changes.apply(
                south,
                "site.monthly.meanAirC",
                halfAYearOn(BOTHY.site().monthly().meanAirC()));
        return Changes.apply(
                south,
                "site.monthly.globalKWhPerM2Day",
                halfAYearOn(BOTHY.site().monthly().globalKWhPerM2Day()));
    }

    private static String halfAYearOn(List<Double> months) {
        return String.join(
                ", ",
                IntStream.range(0, 12)
                        .mapToObj(month -> months.get((month + 6) % 12).toString())
                        .toList());
    }

    private static Absence absence(Design design) {
        return design.safety().orElseThrow().absence().orElseThrow();
    }

    private static Optional<Caution> frozen(Design design) {
        return SafetyVerdict.quick(design).cautions().stream()
                .filter(caution -> caution.kind() == CautionKind.FROST_EMPTY)
                .findFirst();
    }

    @Test
    void aHouseLeftFullIsLeftInTheWinterOfItsPlace() {
        assertEquals(
                List.of(1, 2),
                absence(Changes.apply(BOTHY, "absence.drained", "left full")).months());
        Design left = Changes.apply(MIRRORED, "absence.drained", "left full");

        assertEquals(List.of(7, 8), absence(left).months());
        Caution frozen = frozen(left).orElseThrow();
        assertEquals(Severity.DANGER, frozen.severity());
        assertTrue(frozen.text().contains("July"), frozen.text());
        assertFalse(
                frozen(Changes.apply(left, "safety.absence.months", "1, 2")).isPresent(),
                "summer there does not freeze");
    }

    @Test
    void theHeartOfWinterGoesOverNewYear() {
        Design late = Changes.apply(BOTHY, "site.monthly.meanAirC", "1, 2, 5, 9, 13, 17, 19, 18, 14, 9, 4, 0");

        assertEquals(List.of(1, 12), late.site().heartOfWinter());
    }

    /** Seasons by name have their like on the other side. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "September to May | March to November",
                "October to April | April to October",
                "November to March | May to September",
                "October to December, March and April | April to June, September and October"
            })
    void everySeasonHasASouthernOne(String north, String south) {
        assertEquals(
                Changes.apply(BOTHY, "fire.months", north).fire().orElseThrow().months().stream()
                        .map(month -> (month + 5) % 12 + 1)
                        .sorted()
                        .toList(),
                Changes.apply(BOTHY, "fire.months", south).fire().orElseThrow().months());
    }

    @Test
    void whatIsStartedIsStartedForItsHalf() {
        Design bare = DesignJson.read(DesignJson.write(MIRRORED)
                .replaceAll("(?s)\"fire\" : \\{.*?\\},\\s*\"coldLegs\"", "\"coldLegs\"")
                .replaceAll("(?s)\"window\" : \\{.*?\\},\\s*\"taps\"", "\"taps\""));
        assertTrue(bare.fire().isEmpty() && bare.window().isEmpty());

        Design lit = Changes.apply(bare, "fire.burnKgPerH", "2");
        Design glazed = Changes.apply(bare, "window.areaM2", "0.3");

        assertEquals(List.of(4, 5, 6, 7, 8, 9, 10), lit.fire().orElseThrow().months());
        assertEquals(0, glazed.window().orElseThrow().azimuthDeg());
    }

    /**
     * Half a year on and turned round, the year is the same within what the earth's way round the sun does: nearer to the sun in January by
     * 3.3 %, and months that are not all alike.
     */
    @Test
    void aMirroredHouseHasTheSameYear() {
        YearRun north = YearRun.of(BOTHY);
        YearRun south = YearRun.of(MIRRORED);

        assertEquals(north.woodKg(), south.woodKg(), 0.02 * north.woodKg());
        assertEquals(
                north.energy().solarKWh(),
                south.energy().solarKWh(),
                0.06 * north.energy().solarKWh());
        assertEquals(north.hottestC(), south.hottestC(), 2);
    }

    private static List<String> doubts(Design design) {
        return Doubts.of(design).stream()
                .map(doubt -> doubt.code().replaceFirst(" .*", ""))
                .toList();
    }

    @Test
    void slipsAreAskedAboutAndRightHousesAreNot() {
        assertEquals(List.of(), doubts(MIRRORED));
        Stream.of(Dwelling.values())
                .forEach(dwelling -> assertEquals(List.of(), doubts(dwelling.design()), dwelling.code()));
        assertEquals(List.of("doubt.clock"), doubts(Changes.apply(MIRRORED, "site.longitudeDeg", "147")));
        assertEquals(List.of("doubt.panes"), doubts(Changes.apply(MIRRORED, "window.azimuthDeg", "180")));
        assertEquals(List.of("doubt.panes"), doubts(Changes.apply(BOTHY, "window.azimuthDeg", "20")));
        assertEquals(
                List.of("doubt.panes", "doubt.seasons"), doubts(Changes.apply(BOTHY, "site.latitudeDeg", "-46.2")));
        assertEquals(List.of("doubt.fire"), doubts(Changes.apply(MIRRORED, "fire.months", "November to March")));
        Design drained = Changes.apply(MIRRORED, "absence.drained", "drained");
        assertEquals(List.of(), doubts(drained));
        assertEquals(List.of("doubt.absence"), doubts(Changes.apply(drained, "safety.absence.months", "1, 2")));
    }

    /** Other programs are asked too, by the kind of slip and the field to look at. */
    @Test
    void slipsStandInTheJsonWithTheirFields() throws Exception {
        assertEquals(List.of(), slips(MIRRORED));
        Design slipped = MIRRORED;
        for (String[] told : new String[][] {
            {"site.utcOffsetH", "-10"},
            {"site.latitudeDeg", "46.2"},
            {"absence.drained", "drained"}
        }) {
            slipped = Changes.apply(slipped, told[0], told[1]);
        }
        assertEquals(
                List.of("clock site.utcOffsetH", "panes window.azimuthDeg", "seasons site.latitudeDeg"),
                slips(slipped));
        assertEquals(
                List.of("fire fire.months", "absence safety.absence.months"),
                slips(Changes.apply(
                        Changes.apply(
                                Changes.apply(MIRRORED, "absence.drained", "drained"), "safety.absence.months", "1, 2"),
                        "fire.months",
                        "November to March")));
    }

    private static List<String> slips(Design design) throws Exception {
        JsonNode asked =
                new ObjectMapper().readTree(SheetJson.write(Sheet.of(design))).at("/slips");
        assertTrue(asked.isArray(), "there also where nothing is asked");
        List<String> slips = new ArrayList<>();
        for (JsonNode slip : asked) {
            assertTrue(slip.at("/text").textValue().endsWith("?"), slip.toString());
            slips.add(slip.at("/kind").textValue() + " " + slip.at("/field").textValue());
        }
        return slips;
    }

    @Test
    void aSlipIsAskedAboutInTheReadersUnits() {
        Design lit = Changes.apply(MIRRORED, "fire.months", "November to March");

        String us = String.join(" ", SheetText.lines(Sheet.of(lit), Units.US, caution -> List.of()));

        assertTrue(us.contains("Is this so? The fire burns in the warmer months"), us);
        assertTrue(us.replaceFirst(".*Is this so", "").substring(0, 160).contains("°F"), us);
    }
}
