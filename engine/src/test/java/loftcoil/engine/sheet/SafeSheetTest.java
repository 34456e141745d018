package loftcoil.engine.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import loftcoil.engine.caution.Ask;
import loftcoil.engine.caution.Caution;
import loftcoil.engine.caution.Severity;
import loftcoil.engine.design.Changes;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.Example;
import loftcoil.engine.design.SafeBothy;
import org.junit.jupiter.api.Test;

/** Cautions as a builder sees them, with the year marched and the fire reckoned. */
class SafeSheetTest {

    @Test
    void aWholeSheetOfASafeDesignHasNothingButANoteAndNoQuestion() {
        // Enough water for the fire, lit all year so that the tank is heated through, and no sun on top of it in
        // summer. Hot enough for that, its coil sings.
        Sheet sheet = Sheet.whole(
                SafeBothy.edited(List.of(
                        "/tank/volumeL", "200",
                        "/coil/heatKW", "1.6",
                        "/fire/litForH", "3",
                        "/fire/months", "[1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12]",
                        "/safety/absence/months", "[]",
                        "/window", "null")),
                40);
        assertEquals(List.of("LC-SING"), codes(sheet));
        assertEquals(List.of(), sheet.asks());
    }

    /**
     * Two kilowatts for four hours into 120 L, and nothing to warm it in summer without a fire. The loop boils on a tank that is near
     * boiling, and lit again on it before it has set off.
     */
    @Test
    void aYearThatBoilsInWinterAndStandsWarmInSummerIsTold() {
        assertEquals(
                List.of("LC-BOIL-HARD", "LC-START", "LC-BOIL-TANK", "LC-LEGIONELLA", "LC-DULL-WEEK"),
                codes(Sheet.whole(SafeBothy.design(), 40)));
    }

    @Test
    void anUnlaggedFlueAndAGreedyCoilTar() {
        Design greedy = SafeBothy.edited(List.of("/safety/flue/insulated", "false", "/safety/flue/heightM", "9"))
                .withCoilHeatKW(3.3);
        assertEquals(List.of("LC-CREOSOTE"), codes(Sheet.of(greedy)));
    }

    /**
     * Six metres of tube in 1.4 kg/h: a balance made apart from this program leaves the flue 96 °C, 63 °C at the low end; the
     * bothy's own coil is in doubt alone.
     */
    @Test
    void tarThatIsToBeExpectedIsADangerAndTarThatMayComeAWarning() {
        Design bothy = Example.orchardBothy();
        Sheet six = Sheet.of(
                Changes.apply(Changes.apply(bothy, "coil.heat", "worked out from the fire"), "coil.lengthM", "6"));
        FireFigures gas = six.flue().orElseThrow();
        assertEquals(96, gas.gasTopC(), 1);
        assertEquals(63, gas.gasLowC(), 1);
        assertEquals(Severity.DANGER, creosote(six).severity());
        FireFigures own = Sheet.of(bothy).flue().orElseThrow();
        assertTrue(own.gasLowC() < 121 && own.gasTopC() > 121, own.toString());
        assertEquals(Severity.WARNING, creosote(Sheet.of(bothy)).severity());
    }

    private static Caution creosote(Sheet sheet) {
        return sheet.cautions().stream()
                .filter(caution -> caution.code().equals("LC-CREOSOTE"))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aFireShortOfAirIsToldFromItsWood() {
        Design tight = SafeBothy.with("/safety/fireRoom/airOpeningCm2", "20");
        assertEquals(List.of("LC-CO-AIR"), codes(Sheet.of(tight)));
    }

    @Test
    void aTankFilledByHandThatItsTapsCanEmptyIsTold() {
        Design byHand =
                SafeBothy.edited(List.of("/tank/drawPortM", "0.2", "/tank/refillAtH", "6", "/safety/coldFeed", "null"));
        Sheet sheet = Sheet.of(byHand);
        assertEquals(List.of("LC-DRY-DRAW"), codes(sheet));
        assertEquals(
                List.of("safety.coldFeed"),
                sheet.asks().stream().map(Ask::field).toList());
    }

    @Test
    void theTextSheetAsksWhatTheDesignLeavesOut() {
        List<String> lines = SheetText.lines(Sheet.of(Example.orchardBothy()));
        assertTrue(lines.contains("Not said in the design"), lines.toString());
        assertTrue(String.join(" ", lines).contains("(safety.vent)"));
    }

    private static List<String> codes(Sheet sheet) {
        return sheet.cautions().stream().map(Caution::code).toList();
    }
}
