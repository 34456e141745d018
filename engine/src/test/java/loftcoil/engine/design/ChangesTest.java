package loftcoil.engine.design;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.fault.RefusedException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ChangesTest {

    private static final Design BOTHY = Example.orchardBothy();

    /** For each change a value that the bothy does not have. */
    private static final Map<String, String> OTHER = Map.ofEntries(
            Map.entry("tank.baseM", "2.7"),
            Map.entry("tank.volumeL", "200"),
            Map.entry("tank.heightM", "0.9"),
            Map.entry("tank.waterlineM", "0.63"),
            Map.entry("tank.coldPortM", "0.1"),
            Map.entry("tank.returnPortM", "0.45"),
            Map.entry("tank.drawPortM", "0.5"),
            Map.entry("tank.shape", "box"),
            Map.entry("tank.coat", "hand-wrapped"),
            Map.entry("tank.laggingMm", "120"),
            Map.entry("tank.laggingMaterial", "none"),
            Map.entry("tank.refill", "by hand, once a day"),
            Map.entry("taps.tube", "EN1057 28x0.9"),
            Map.entry("taps.elbows", "2"),
            Map.entry("taps.mixer", "set to 45 °C"),
            Map.entry("taps.kind", "low-pressure tap 1/2 in"),
            Map.entry("site.altitudeM", "1850"),
            Map.entry("coil.inletM", "0.2"),
            Map.entry("coil.tube", "EN1057 28x0.9"),
            Map.entry("coil.lengthM", "2.4"),
            Map.entry("coil.heatKW", "3.2"),
            Map.entry("coil.ends", "the upper end"),
            Map.entry("loop.tube", "EN1057 28x0.9"),
            Map.entry("legs.tube", "28x1.0 stainless"),
            Map.entry("loop.elbowsPerLeg", "4"),
            Map.entry("loop.slopeMmPerM", "-30"),
            Map.entry("loop.laggingMm", "30"),
            Map.entry("loop.laggingMaterial", "glass wool"),
            Map.entry("hotLegs.tube", "EN1057 15x0.7"),
            Map.entry("coldLegs.tube", "EN1057 15x0.7"),
            Map.entry("hotLegs.laggingMm", "0"),
            Map.entry("coldLegs.laggingMm", "0"),
            Map.entry("hotLegs.laggingMaterial", "none"),
            Map.entry("coldLegs.laggingMaterial", "stone wool"),
            Map.entry("hotLegs.runM", "5"),
            Map.entry("coldLegs.runM", "4"),
            Map.entry("hotLegs.aroundC", "19"),
            Map.entry("coil.turns", "bent from one length"),
            Map.entry("loop.besideFlue", "the cold leg"),
            Map.entry("loop.valves", "2"),
            Map.entry("loop.valveOpening", "three quarters shut"),
            Map.entry("loop.choked", "choked to a fifth of its way"),
            Map.entry("coil.heat", "worked out from the fire"),
            Map.entry("fire.wood", "softwood"),
            Map.entry("fire.moisturePct", "40"),
            Map.entry("fire.burnKgPerH", "2"),
            Map.entry("fire.litFromH", "6"),
            Map.entry("fire.months", "November to March"),
            Map.entry("fire.aDay", "twice"),
            Map.entry("fire.litForH", "8"),
            Map.entry("window.panes", "1"),
            Map.entry("window.areaM2", "1.6"),
            Map.entry("window.tiltDeg", "60"),
            Map.entry("window.azimuthDeg", "90"),
            Map.entry("window.gapMm", "20"),
            Map.entry("window.absorptance", "0.6"),
            Map.entry("window.reflectorShare", "0.3"),
            Map.entry("window.toughened", "1"),
            Map.entry("window.unit", "a soft coat"),
            Map.entry("window.shutter", "40 mm of foam board"),
            Map.entry("vent.kind", "open pipe"),
            Map.entry("vent.tube", "EN1057 15x0.7"),
            Map.entry("vent.aboveWaterlineM", "0.5"),
            Map.entry("vent.valve", "a valve"),
            Map.entry("coldFeed.kind", "float valve"),
            Map.entry("coldFeed.airGapMm", "5"),
            Map.entry("coldFeed.supply", "water that somebody drinks"),
            Map.entry("safety.coldFeed.overflowBoreMm", "26"),
            Map.entry("site.hardnessMgPerL", "250"),
            Map.entry("absence.drained", "left full"));

    static List<String> names() {
        return Changes.names();
    }

    @Test
    void everyChangeIsTriedBelow() {
        assertEquals(new TreeSet<>(Changes.names()), new TreeSet<>(OTHER.keySet()));
    }

    @ParameterizedTest
    @MethodSource("names")
    void everyChangeGivesADesignThatCanBeComputedAndReadsBackWhatWasGiven(String name) {
        String given = OTHER.get(name);
        assertNotEquals(given, Changes.current(BOTHY, name));
        Design changed = Changes.apply(BOTHY, name, given);
        assertEquals(given, Changes.current(changed, name));
        assertNotEquals(BOTHY, changed);
        assertEquals(changed, DesignJson.read(DesignJson.write(changed)));
    }

    @ParameterizedTest
    @MethodSource("names")
    void everyChangeSaysWhatItIsAndTakesItsOwnPresentValue(String name) {
        Change change = Changes.describe(name);
        assertTrue(!change.label().isBlank() && !change.allowed().isBlank());
        String current = Changes.current(BOTHY, name);
        assertEquals(current, Changes.current(Changes.apply(BOTHY, name, current), name));
    }

    @ParameterizedTest
    @MethodSource("names")
    void nonsenseIsRefusedAtTheChangesName(String name) {
        for (String nonsense : List.of("", "a lot", "NaN", "1e9", "-1e9")) {
            RefusedException refused = assertThrows(RefusedException.class, () -> Changes.apply(BOTHY, name, nonsense));
            assertEquals(
                    List.of(name), refused.faults().stream().map(Fault::path).toList());
        }
    }

    @Test
    void halfAPaneIsRefused() {
        for (String counted : List.of("window.panes", "loop.valves", "loop.elbowsPerLeg", "taps.elbows")) {
            RefusedException refused = assertThrows(RefusedException.class, () -> Changes.apply(BOTHY, counted, "1.5"));
            assertEquals(counted, refused.faults().get(0).path());
            assertEquals("a whole number is wanted", refused.faults().get(0).why());
        }
    }

    @Test
    void aPortAboveTheOtherIsRefusedAtThePort() {
        refusedAt("tank.coldPortM", "tank.coldPortM", "0.4");
        refusedAt("tank.waterlineM", "tank.returnPortM", "0.68");
        refusedAt("tank.drawPortM", "tank.drawPortM", "0.67");
        refusedAt("tank.returnPortM", "tank.heightM", "0.3");
    }

    @Test
    void aRunShorterThanTheOtherLegsAloneIsRefused() {
        refusedAt("hotLegs.runM", "hotLegs.runM", "0.2");
    }

    private static void refusedAt(String path, String name, String value) {
        RefusedException refused = assertThrows(RefusedException.class, () -> Changes.apply(BOTHY, name, value));
        assertTrue(refused.faults().stream().anyMatch(fault -> fault.path().equals(path)), refused.getMessage());
    }

    @Test
    void anUnknownChangeNamesTheNearest() {
        RefusedException refused = assertThrows(RefusedException.class, () -> Changes.describe("tank.base"));
        assertTrue(refused.faults().get(0).allowed().contains("tank.baseM"), refused.getMessage());
    }

    @Test
    void aPartThatIsMissingIsStartedFromTheValueThatWasShown() {
        Design bare = new Design(
                BOTHY.name(),
                BOTHY.site(),
                BOTHY.tank(),
                BOTHY.coil(),
                Optional.empty(),
                BOTHY.coldLegs(),
                BOTHY.hotLegs(),
                Optional.empty(),
                List.of(),
                List.of(),
                Optional.empty(),
                Map.of());
        for (String name : Changes.names()) {
            String shown = Changes.current(bare, name);
            assertEquals(shown, Changes.current(Changes.apply(bare, name, shown), name), name);
            assertEquals(OTHER.get(name), Changes.current(Changes.apply(bare, name, OTHER.get(name)), name), name);
        }
        Design fired = Changes.apply(bare, "fire.moisturePct", "30");
        assertEquals("hardwood", fired.fire().orElseThrow().wood());
        assertEquals(
                2,
                Changes.apply(bare, "window.tiltDeg", "50")
                        .window()
                        .orElseThrow()
                        .panes());
        assertEquals(1, Changes.apply(bare, "taps.elbows", "0").taps().size());
        Vent vent = Changes.apply(bare, "vent.aboveWaterlineM", "0.4")
                .safety()
                .orElseThrow()
                .vent()
                .orElseThrow();
        assertEquals(Vent.Kind.OPEN_PIPE, vent.kind());
        assertEquals(Optional.of(false), vent.valve());
    }

    @Test
    void aHeatThatWasWorkedOutIsStatedAsItWas() {
        Design workedOut = Changes.apply(BOTHY, "coil.heat", "worked out from the fire");
        assertTrue(workedOut.coil().heatKW().isEmpty());
        double estimateKW = Double.parseDouble(Changes.current(workedOut, "coil.heatKW"));
        Design stated = Changes.apply(workedOut, "coil.heat", "as stated");
        assertEquals(estimateKW, stated.coil().heatKW().orElseThrow(), 0.05);
    }

    @Test
    void emptyWinterTurnsToADrainedOneWithItsMonths() {
        Design full = Changes.apply(BOTHY, "absence.drained", "left full");
        Design drained = Changes.apply(full, "absence.drained", "drained");
        assertEquals(
                new Absence(List.of(1, 2), true),
                drained.safety().orElseThrow().absence().orElseThrow());
        Design never = Changes.apply(drained, "absence.drained", "never left");
        assertTrue(never.safety().orElseThrow().absence().orElseThrow().months().isEmpty());
    }

    @Test
    void whatIsSaidOfAVentOutlastsALooseLid() {
        Design tall = Changes.apply(BOTHY.withVentAboveWaterlineM(0.55), "vent.kind", "loose lid");
        Design piped = Changes.apply(tall, "vent.kind", "open pipe");
        assertEquals("0.55", Changes.current(piped, "vent.aboveWaterlineM"));
        assertEquals("not said", Changes.current(Changes.apply(tall, "vent.kind", "not said"), "vent.kind"));
    }

    @Test
    void theMixingValveNearestToTheOneSetIsShown() {
        Design set = Changes.apply(BOTHY, "taps[0].mixerC", "44.6");
        assertEquals("set to 45 °C", Changes.current(set, "taps.mixer"));
        assertFalse(
                Changes.apply(set, "taps.mixer", "none").taps().get(0).mixerC().isPresent());
    }

    @Test
    void monthsThatHaveNoNameStayAsTheDesignSaysThem() {
        Design july = BOTHY.with(
                DesignTable.FIRE,
                Optional.of(FireFields.TABLE.with(BOTHY.fire().orElseThrow(), FireFields.MONTHS, List.of(7))));
        String now = Changes.current(july, "fire.months");

        assertEquals("other months, as the design says", now);
        assertEquals(july, Changes.apply(july, "fire.months", now));
        assertEquals(
                List.of(1, 2, 3, 11, 12),
                Changes.apply(july, "fire.months", "November to March")
                        .fire()
                        .orElseThrow()
                        .months());
    }

    @Test
    void theHotLegsAloneGetAnotherCoat() {
        Design wool = Changes.apply(BOTHY, "hotLegs.laggingMaterial", "stone wool");

        assertTrue(wool.hotLegs().stream()
                .allMatch(leg -> leg.lagging().orElseThrow().material().equals("stone wool")));
        assertEquals(BOTHY.coldLegs(), wool.coldLegs());
    }
}
