package loftcoil.engine.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import loftcoil.engine.design.Example;
import loftcoil.engine.design.Monthly;
import loftcoil.engine.design.Origin;
import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.sun.Extraterrestrial;
import loftcoil.engine.words.Measure;
import org.junit.jupiter.api.Test;

/** A year's sun and air from a file or from what people remember, and slips that are asked about. */
class ClimateTest {

    /**
     * FAO Irrigation and Drainage Paper 56 (1998), examples 8 and 10: Rio de Janeiro, 22°54' S, May: 25.1 MJ/m² a day outside the air on
     * the 15th, of which 14.5 come down with 7.1 of 10.9 hours sunny.
     */
    @Test
    void theSunThatComesDownIsThatOfThePublishedExample() {
        double outside = Extraterrestrial.dailyMJPerM2(-22.9, 135);

        assertEquals(25.1, outside, 0.3);
        assertEquals(14.5, ClimateEstimate.sunShare(7.1 / 10.9) * outside, 0.2);
    }

    @Test
    void anEstimateHasItsSeasonsOnTheRightSideOfTheEquator() {
        Monthly north = new ClimateEstimate(46, Sky.DULL, Sky.MIXED, Sky.CLEAR, Sky.CLOUDY, 19, 0).monthly();
        Monthly south = new ClimateEstimate(-46, Sky.DULL, Sky.MIXED, Sky.CLEAR, Sky.CLOUDY, 19, 0).monthly();

        assertEquals(19, north.meanAirC().get(6));
        assertEquals(0, north.meanAirC().get(0));
        assertEquals(19, south.meanAirC().get(0));
        assertEquals(0, south.meanAirC().get(6));
        assertTrue(
                north.globalKWhPerM2Day().get(6) > 5 * north.globalKWhPerM2Day().get(11), north.toString());
        assertTrue(
                south.globalKWhPerM2Day().get(0) > 5 * south.globalKWhPerM2Day().get(6), south.toString());
    }

    @Test
    void aColdestMonthAboveTheWarmestIsRefused() {
        RefusedException refused = assertThrows(
                RefusedException.class, () -> new ClimateEstimate(80, Sky.DULL, Sky.DULL, Sky.DULL, Sky.DULL, 10, 12));

        assertEquals(
                List.of("latitudeDeg", "coldestC"),
                refused.faults().stream().map(fault -> fault.path()).toList());
    }

    private static String hourly(String sunOfJuly) {
        int[] days = {31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
        StringBuilder file = new StringBuilder("LOCATION,Nowhere,-,-,made up,0,-42.10,147.20,10.0,310.0\n");
        IntStream.range(0, 7).forEach(i -> file.append("COMMENTS,").append(i).append('\n'));
        for (int month = 1; month <= 12; month++) {
            for (int hour = 0; hour < 24 * days[month - 1]; hour++) {
                String sun = month == 7 ? sunOfJuly : Integer.toString(100 * month);
                file.append("2001,%d,%d,%d,60,?,%d.5,5,50,101300,0,0,300,%s,0,0%n"
                        .formatted(month, hour / 24 + 1, hour % 24 + 1, month, sun));
            }
        }
        return file.toString();
    }

    @Test
    void hoursInTheOpenFormBecomeMonthlyMeansAndAPlace() {
        ClimateFile read = ClimateFile.read(hourly("700"));

        assertEquals(0.1 * 24, read.monthly().globalKWhPerM2Day().get(0), 1e-9);
        assertEquals(1.2 * 24, read.monthly().globalKWhPerM2Day().get(11), 1e-9);
        assertEquals(3.5, read.monthly().meanAirC().get(2), 1e-9);
        assertEquals(new ClimateFile.Spot(-42.1, 147.2, 10, 310), read.place().orElseThrow());
    }

    @Test
    void aMonthWithoutSunIsRefusedByItsNumber() {
        RefusedException refused = assertThrows(RefusedException.class, () -> ClimateFile.read(hourly("9999")));

        assertEquals("file: month 7", refused.faults().get(0).path());
    }

    @Test
    void aBrokenHourIsRefusedByItsLine() {
        String broken = hourly("700").replaceFirst("2001,1,1,1,60,\\?,1.5", "2001,1,1,1,60,?,warm");

        assertEquals(
                "file: line 9",
                assertThrows(RefusedException.class, () -> ClimateFile.read(broken))
                        .faults()
                        .get(0)
                        .path());
    }

    @Test
    void twelveLinesAreReadWithPointOrComma() {
        String points = IntStream.rangeClosed(1, 12)
                .mapToObj(month -> month + ", " + month / 2.0 + ", " + -month)
                .collect(Collectors.joining("\n", "month, sun, air\n", "\n"));
        String commas = IntStream.rangeClosed(1, 12)
                .mapToObj(month -> (month / 2.0 + ";" + -month).replace('.', ','))
                .collect(Collectors.joining("\n"));

        assertEquals(6, ClimateFile.read(points).monthly().globalKWhPerM2Day().get(11));
        assertEquals(ClimateFile.read(points), ClimateFile.read(commas));
    }

    @Test
    void aTableIsTheSameWithAMarkBeforeItWithBlanksOrInAnotherOrder() {
        List<String> rows = IntStream.rangeClosed(1, 12)
                .mapToObj(month -> month + "," + month / 2.0 + "," + -month)
                .toList();
        ClimateFile plain = ClimateFile.read(String.join("\n", rows));
        String julyFirst = String.join("\n", rows.subList(6, 12)) + "\n" + String.join("\n", rows.subList(0, 6));
        String named = String.join("\n", rows).replaceFirst("^1,", "January,").replaceFirst("\n2,", "\nFeb.,");

        assertEquals(plain, ClimateFile.read("\uFEFF" + String.join("\r\n", rows)));
        assertEquals(plain, ClimateFile.read(julyFirst));
        assertEquals(plain, ClimateFile.read(named));
        assertEquals(plain, ClimateFile.read(String.join("\n", rows).replace(',', '\t')));
        assertEquals(plain, ClimateFile.read(String.join("\n", rows).replace(',', ' ')));
        assertEquals(
                plain,
                ClimateFile.read(String.join("\n", rows).replace(',', ' ').replace('.', ',')));
    }

    @Test
    void aTableThatCanMeanTwoThingsIsRefusedByItsLine() {
        String decimalCommas =
                IntStream.rangeClosed(1, 12).mapToObj(month -> "m,1,4,2,5").collect(Collectors.joining("\n"));
        assertRefused("file: line 1: “m,1,4,2,5”", decimalCommas);
        String eleven =
                IntStream.rangeClosed(1, 11).mapToObj(month -> "1.4,2.5").collect(Collectors.joining("\n"));
        assertRefused("file: 11 months", eleven);
        String twice = IntStream.rangeClosed(1, 12)
                .mapToObj(month -> Math.min(month, 11) + ",1.4,2.5")
                .collect(Collectors.joining("\n"));
        assertRefused("file: no line of month 12", twice);
        String fahrenheit =
                IntStream.rangeClosed(1, 12).mapToObj(month -> "1.4,64").collect(Collectors.joining("\n"));
        RefusedException warm = assertThrows(RefusedException.class, () -> Survey.from(Example.orchardBothy())
                .withClimate(ClimateFile.read(fahrenheit).monthly(), Origin.YOURS));
        assertTrue(
                warm.lines().get(0).endsWith("(in °F where °C are wanted?)"),
                warm.lines().get(0));
    }

    private static void assertRefused(String start, String text) {
        String line = assertThrows(RefusedException.class, () -> ClimateFile.read(text))
                .lines()
                .get(0);
        assertTrue(line.startsWith(start), line);
    }

    @Test
    void anyOtherTextIsRefused() {
        assertThrows(RefusedException.class, () -> ClimateFile.read(""));
        assertThrows(RefusedException.class, () -> ClimateFile.read("hello"));
        assertThrows(RefusedException.class, () -> ClimateFile.read("1,2\n3,4"));
    }

    private static List<String> doubts(Map<String, String> texts) {
        return Survey.from(Example.orchardBothy()).with(texts, Origin.YOURS).standing().doubts().stream()
                .map(doubt -> doubt.code())
                .toList();
    }

    @Test
    void slipsAreAskedAboutAndAHouseThatIsRightIsNot() {
        assertEquals(List.of(), doubts(Map.of()));
        assertEquals(List.of("doubt.clock"), doubts(Map.of("site.longitudeDeg", "147")));
        assertEquals(List.of("doubt.panes doubt.panes.south"), doubts(Map.of("window.azimuthDeg", "10")));
        assertEquals(
                List.of("doubt.panes doubt.panes.north", "doubt.seasons"), doubts(Map.of("site.latitudeDeg", "-46")));
        assertEquals(List.of("doubt.fire"), doubts(Map.of("fire.months", "5, 6, 7, 8")));
        assertEquals(List.of(), doubts(Map.of("site.longitudeDeg", "-179", "site.utcOffsetH", "12")));
    }

    /** The months that are compared are those with a fire and those without, none of them twice. */
    @Test
    void aSummerFireIsToldByTheWarmthOfItsMonthsAndOfTheOthers() {
        Survey summer = Survey.from(Example.orchardBothy()).with(Map.of("fire.months", "5, 6, 7, 8"), Origin.YOURS);
        List<Double> air = Example.orchardBothy().site().monthly().meanAirC();
        double others = IntStream.of(1, 2, 3, 4, 9, 10, 11, 12)
                .mapToDouble(month -> air.get(month - 1))
                .average()
                .orElseThrow();

        String told = summer.standing().doubts().get(0).metric();

        assertTrue(told.contains(Measure.celsius(others).metric()), told);
    }
}
