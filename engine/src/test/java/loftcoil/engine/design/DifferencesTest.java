package loftcoil.engine.design;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** What two designs differ in, in words; that every field is told is held by {@link DesignFieldsTest}. */
class DifferencesTest {

    private static final Design BOTHY = Example.orchardBothy();

    private static List<String> told(Design before, Design after) {
        return Differences.between(before, after).stream()
                .map(said -> said.words().metric())
                .toList();
    }

    @Test
    void aDesignDiffersInNothingFromItself() {
        assertEquals(List.of(), told(BOTHY, BOTHY));
    }

    @Test
    void aRaisedTankTellsThePipesThatAreStretched() {
        Design raised = Changes.apply(BOTHY, "tank.baseM", "2.75");
        List<String> moved = Differences.moved(BOTHY, raised, List.of("tank.baseM")).stream()
                .map(said -> said.words().metric())
                .toList();
        assertEquals(4, moved.size(), moved.toString());
        String cold = BOTHY.coldLegs().get(0).name();
        double longer = raised.coldLegs().get(0).lengthM();
        assertTrue(
                moved.get(0).startsWith("Cold pipe “" + cold + "”: Length of the leg, ")
                        && moved.get(0).endsWith(" → " + String.format(java.util.Locale.ROOT, "%.2f m", longer)),
                moved.get(0));
    }

    @Test
    void aChangeOfNothingButItselfMovesNothingElse() {
        Design hotter = Changes.apply(BOTHY, "fire.litForH", "3");
        assertEquals(List.of(), Differences.moved(BOTHY, hotter, List.of("fire.litForH")));
        Design wider = Changes.apply(BOTHY, "loop.tube", "EN1057 28x0.9");
        assertEquals(List.of(), Differences.moved(BOTHY, wider, List.of("loop.tube")));
    }

    @Test
    void theHalfOfTheEarthIsToldInWords() {
        assertEquals(
                List.of("Site: Latitude, 46.2° north → 42.1° south"),
                told(BOTHY, Changes.tried(BOTHY, "site.latitudeDeg", "-42.1")));
    }

    @Test
    void onlyTheMonthsThatDifferAreTold() {
        String air = IntStream.range(0, 12)
                .mapToObj(month ->
                        Double.toString(BOTHY.site().monthly().meanAirC().get(month) + (month == 6 ? 1.5 : 0)))
                .collect(Collectors.joining(", "));
        List<String> told = told(BOTHY, Changes.tried(BOTHY, "site.monthly.meanAirC", air));
        assertEquals(1, told.size(), told.toString());
        assertTrue(told.get(0).startsWith("Site: Air temperature in July, "), told.get(0));
    }

    @Test
    void onePipeMoreAtTheFrontIsOneDifference() {
        List<Leg> legs = new ArrayList<>(BOTHY.hotLegs());
        Leg level = legs.get(0).withRiseM(0);
        legs.add(0, LegFields.TABLE.with(level, LegFields.NAME, "stub"));
        List<Differences.Said> told = Differences.between(BOTHY, BOTHY.withHotLegs(legs));
        assertEquals(1, told.size(), told.toString());
        assertEquals("Hot pipe “stub”", told.get(0).part());
        assertTrue(told.get(0).words().metric().contains("none → Name of the leg stub"), told.toString());
        assertTrue(Differences.between(BOTHY.withHotLegs(legs), BOTHY)
                .get(0)
                .words()
                .metric()
                .endsWith(" → none"));
    }

    @Test
    void tapsInAnotherOrderAreToldAsThat() {
        List<Tap> turned = new ArrayList<>(BOTHY.taps());
        Collections.reverse(turned);
        List<Differences.Said> told = Differences.between(BOTHY, BOTHY.with(DesignTable.TAPS, turned));
        assertEquals(
                List.of("order"), told.stream().map(Differences.Said::label).toList());
    }

    @Test
    void aDrawThatIsGoneIsTold() {
        List<String> told =
                told(BOTHY, BOTHY.withUse(BOTHY.use().subList(1, BOTHY.use().size())));
        assertEquals(1, told.size(), told.toString());
        assertTrue(told.get(0).startsWith("Draw 1 from “"), told.get(0));
    }

    @Test
    void panesThatAreTakenAwayAreToldFieldByField() {
        List<String> told = told(BOTHY, new Sketch(BOTHY).withoutWindow().design());
        assertTrue(told.contains("Panes: Number of panes, 3 → none"), told.toString());
    }

    @Test
    void notesAndOriginsAreToldToo() {
        List<String> told = told(BOTHY, BOTHY.borrowed());
        assertEquals(1, told.size(), told.toString());
        assertTrue(told.get(0).startsWith("Where values are from, "), told.get(0));
    }

    @Test
    void twoNumbersThatDifferAreNeverWrittenAlike() {
        List<String> told = told(BOTHY, Changes.tried(BOTHY, "tank.baseM", "2.2001"));
        assertTrue(told.get(0).contains("2.2000 m → 2.2001 m"), told.toString());
    }
}
