package loftcoil.engine.caution;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import loftcoil.engine.design.Changes;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.Example;
import loftcoil.engine.design.LaggingChoice;
import loftcoil.engine.design.Leg;
import loftcoil.engine.design.SafeBothy;
import loftcoil.engine.loop.Circuit;
import loftcoil.engine.pipe.LaggingTable;
import loftcoil.engine.pipe.TubeTable;
import loftcoil.engine.run.ClearSpell;
import loftcoil.engine.run.DullWeek;
import loftcoil.engine.run.Weeks;
import loftcoil.engine.start.Counterflow;
import loftcoil.engine.start.Start;
import loftcoil.engine.start.StartEnd;
import loftcoil.engine.start.Starts;
import loftcoil.engine.tank.SafeLevel;
import loftcoil.engine.words.SaidCodes;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Both ways: what is safe raises nothing, and one change of it raises its own caution and no other. */
class CautionsTest {

    private static final YearFacts MILD_YEAR = new YearFacts(74, 12, 74, -11, 2);
    private static final FireFacts WARM_FLUE = new FireFacts(190, 150, 6);

    @Test
    void aDesignThatSaysAllAndHasNoDangerRaisesAndAsksNothing() {
        assertEquals(new CautionReport(List.of(), List.of()), Cautions.of(steady(SafeBothy.design(), 40)));
        assertEquals(new CautionReport(List.of(), List.of()), Cautions.of(full(SafeBothy.design())));
    }

    @Test
    void aDesignThatSaysNothingIsAskedAndNotAccused() {
        CautionReport report = Cautions.of(steady(Example.orchardBothy(), 40));
        assertEquals(List.of("LC-COIL-JOINT", "LC-COIL-WALL"), codes(report));
        assertEquals(
                List.of(
                        "safety.vent",
                        "safety.coldFeed",
                        "safety.signedNotForDrinking",
                        "safety.absence",
                        "site.hardnessMgPerL",
                        "safety.materials",
                        "safety.structure",
                        "safety.flue",
                        "safety.fireRoom"),
                report.asks().stream().map(Ask::field).toList());
    }

    @Test
    void withoutFireNoFluesAreAskedFor() {
        List<String> fields = Cautions.of(steady(Example.orchardBothy().withCoilHeatKW(0), 40)).asks().stream()
                .map(Ask::field)
                .toList();
        assertFalse(fields.contains("safety.flue") || fields.contains("safety.fireRoom"), fields.toString());
    }

    static Stream<Arguments> changes() {
        return Stream.of(
                change("LC-VENT-NONE", "/safety/vent", "{\"kind\": \"none\"}"),
                change("LC-SEALED", "/safety/vent", "{\"kind\": \"sealed\"}"),
                change("LC-VENT-VALVE", "/safety/vent/valve", "true"),
                change("LC-VENT-BORE", "/safety/vent/tube", "\"EN1057 15x0.7\""),
                change("LC-VENT-LOW", "/safety/vent/aboveWaterlineM", "0.2"),
                change("LC-FEED-VALVE", "/safety/coldFeed/valve", "true"),
                change("LC-BACKFLOW", "/safety/coldFeed/airGapMm", "25"),
                change("LC-DRINK", "/safety/signedNotForDrinking", "false"),
                change("LC-OVERFLOW-BORE", "/safety/coldFeed/overflowBoreMm", "13"),
                change("LC-OVERFLOW-BORE", "/safety/coldFeed/overflowBoreMm", "0"),
                change("LC-PLASTIC", "/safety/coldFeed/plasticCistern", "true"),
                change("LC-SCALD", "/taps/0/mixerC", "null"),
                change("LC-SCALD", "/taps/2/mixerC", "50"),
                change("LC-VALVE", "/coil/fittings", "{\"ball\": 1}"),
                change("LC-COIL-JOINT", "/coil/fittings", "{\"bend90\": 3, \"union\": 1}"),
                change("LC-COIL-WALL", "/coil/tube", "\"EN1057 22x0.9\""),
                change("LC-SCALE", "/site/hardnessMgPerL", "150"),
                change("LC-SCALE", "/site/hardnessMgPerL", "300"),
                change("LC-FROST-LOOP", "/coldLegs/0/aroundFireOutC", "-4"),
                change("LC-FROST-TANK", "/tank/aroundC", "-2"),
                change("LC-FROST-EMPTY", "/safety/absence", "{\"months\": [1, 2], \"drained\": false}"),
                change("LC-DRY-FIRE", "/safety/absence/months", "[11, 12]"),
                change("LC-ANTIFREEZE", "/safety/antifreeze", "true"),
                change("LC-METALS", "/safety/materials/tank", "\"galvanised steel\""),
                change("LC-METALS", "/safety/materials/inLoop", "[\"brass\", \"plain steel\"]"),
                change("LC-METALS", "/coil/tube", "\"22x2.0 steel\""),
                change("LC-PLASTIC", "/safety/materials/tank", "\"plastic\""),
                change(
                        "LC-PLASTIC",
                        "/safety/materials/plasticPipes",
                        "[{\"name\": \"to the sink\", \"inLoop\": false, \"fromHeaterM\": 0.4}]"),
                change(
                        "LC-PLASTIC",
                        "/safety/materials/plasticPipes",
                        "[{\"name\": \"return\", \"inLoop\": true, \"fromHeaterM\": 3}]"),
                change("LC-ROOF-LOAD", "/safety/structure/loadLimitKg", "120"),
                change("LC-ROOF-BEARERS", "/safety/structure/bearers", "1"),
                change("LC-TIP", "/safety/structure/wheels/trackM", "1.0"),
                change("LC-TIP", "/safety/structure/wheels/tankAheadM", "-8"),
                change("LC-AXLE", "/safety/structure/wheels/axleLimitKg", "2000"),
                change("LC-FLUE-NEAR", "/safety/flue/flueToCombustibleMm", "300"),
                change("LC-FLUE-NEAR", "/safety/flue/flueNeedsMm", "600"),
                change("LC-HEATER-NEAR", "/safety/flue/heaterToCombustibleMm", "500"),
                change("LC-FLUE-LOW", "/safety/flue/topAboveRoofM", "0.5"),
                change("LC-CO-ALARM", "/safety/fireRoom/carbonMonoxideAlarm", "false"),
                change("LC-CO-AIR", "/safety/fireRoom/airOpeningCm2", "10"),
                change("LC-CO-FAN", "/safety/fireRoom/extractFan", "true"),
                change("LC-WET-WOOD", "/fire/moisturePct", "30"),
                change("LC-INLET", "/taps/2/appliance", "\"washing machine\""),
                change("LC-OVERFLOW", "/tank/waterlineM", "0.69"),
                change("LC-SUN-FACE", "/window/areaM2", "6"),
                change("LC-SUN-FACE", "/window/reflectorShare", "null"),
                change("LC-GLASS", "/window/toughened", "1"),
                change("LC-GLASS", "/window/toughened", "null"),
                change("LC-DRY-COVER", "/tank/waterlineM", "0.40", "/tank/drawPortM", "0.38"),
                change("LC-LEVEL", "/safety/coldFeed/kind", "\"by hand\""),
                change("LC-DRY-DRAW", "/tank/drawPortM", "0.2", "/safety/coldFeed/kind", "\"by hand\""));
    }

    @ParameterizedTest
    @MethodSource("changes")
    void oneChangeRaisesItsOwnCautionAndNoOther(String code, List<String> edits) {
        CautionReport report = Cautions.of(full(SafeBothy.edited(edits)));
        assertEquals(List.of(code), codes(report));
        assertEquals(List.of(), report.asks());
        assertTrue(report.cautions().get(0).text().matches("(?s).*\\w.*Ask first: .*"));
    }

    static Stream<Arguments> otherFacts() {
        Design safe = SafeBothy.design();
        List<Leg> cold = safe.coldLegs();
        Leg flue = safe.hotLegs().get(0);
        Leg last = safe.hotLegs().get(1);
        CautionFacts usual = steady(safe, 40);
        Design weakest = Changes.apply(Changes.apply(safe, "fire.burnKgPerH", "20"), "loop.tube", "EN1057 15x1.0")
                .withCoilHeatKW(20);
        Circuit weak = weakest.circuit(40);
        Leg foam = new Leg(
                flue.name(),
                flue.tube(),
                flue.lengthM(),
                flue.riseM(),
                flue.fittings(),
                cold.get(0).lagging(),
                160,
                flue.aroundFireOutC());
        return Stream.of(
                Arguments.of("LC-TANK-LOW", full(SafeBothy.unwheeled().withTankBaseM(-1.5))),
                Arguments.of("LC-BOIL", full(weakest)),
                Arguments.of(
                        "LC-COIL-SHARE",
                        full(SafeBothy.with("/fire/burnKgPerH", "0.7")).withFire(new FireFacts(190, 122, 10.8))),
                Arguments.of("LC-BOIL-NEAR", steady(safe.withCoilHeatKW(3), 82)),
                Arguments.of(
                        "LC-BOIL-HARD", usual.withHarder(List.of(HarderCase.stronger(40, 1.5, 20, weak.search())))),
                Arguments.of("LC-BOIL-TANK", usual.withYear(new YearFacts(96, 12, 74, -11, 2))),
                Arguments.of("LC-BOIL-TANK", usual.withYear(new YearFacts(80, 12, 74, -11, 2, 30, 40))),
                Arguments.of("LC-SING", full(safe).withSinging(OptionalDouble.of(73))),
                Arguments.of("LC-STILL", full(chilledRiser())),
                Arguments.of("LC-START", usual.withStarts(wrong(OptionalDouble.of(8), StartEnd.BOILS))),
                Arguments.of(
                        "LC-START-UNSURE",
                        usual.withStarts(new Starts(List.of(
                                start(OptionalDouble.of(1), Counterflow.SOME, StartEnd.FORWARD, 3),
                                start(OptionalDouble.of(1), Counterflow.FULL, StartEnd.FORWARD, 0))))),
                Arguments.of("LC-FLAT", full(safe.withLegs(cold, List.of(flue.withRiseM(1.78), last.withRiseM(0.02))))),
                Arguments.of("LC-AIR", full(safe.withLegs(cold, List.of(flue.withRiseM(2.0), last.withRiseM(-0.2))))),
                Arguments.of("LC-AIR", full(Changes.apply(safe, "coil.ends", "the upper end"))),
                Arguments.of(
                        "LC-AIR",
                        full(safe.withLegs(
                                List.of(cold.get(0).withRiseM(-2.0), cold.get(1).withRiseM(0.1)),
                                List.of(flue, last)))),
                Arguments.of(
                        "LC-SIPHON", full(safe.withLegs(cold, List.of(flue.withRiseM(2.4), last.withRiseM(-0.6))))),
                Arguments.of("LC-LAGGING-HOT", full(safe.withLegs(cold, List.of(foam, last)))),
                Arguments.of(
                        "LC-HOT-PIPE", full(safe.withLegs(cold, List.of(flue, last.withLagging(Optional.empty()))))),
                Arguments.of("LC-LEGIONELLA", usual.withYear(new YearFacts(50, 12, 50, -11, 40))),
                Arguments.of("LC-FROST-WINDOW", usual.withYear(new YearFacts(74, 1, 74, -11, 2))),
                Arguments.of("LC-CREOSOTE", usual.withFire(new FireFacts(95, 60, 6))),
                Arguments.of("LC-DULL-WEEK", usual.withWeeks(dull(7, 0.6))));
    }

    private static Weeks dull(int month, double shortShare) {
        return new Weeks(Optional.empty(), Optional.of(new DullWeek(month, shortShare, 0.3)));
    }

    private static Weeks clear(double hottestC) {
        return new Weeks(Optional.of(new ClearSpell(7, hottestC, hottestC)), Optional.empty());
    }

    @ParameterizedTest
    @MethodSource("otherFacts")
    void oneOtherFactRaisesItsOwnCautionAndNoOther(String code, CautionFacts facts) {
        CautionReport report = Cautions.of(facts);
        assertEquals(List.of(code), codes(report));
        assertEquals(List.of(), report.asks());
    }

    @Test
    void tarThatOnlyMayComeIsMilder() {
        CautionReport report = Cautions.of(steady(SafeBothy.design(), 40).withFire(new FireFacts(180, 95, 6)));
        assertEquals(List.of("LC-CREOSOTE"), codes(report));
        assertEquals(Severity.WARNING, report.cautions().get(0).severity());
    }

    @Test
    void whatIsOnlyNearlyDangerousRaisesNothing() {
        CautionFacts usual = steady(SafeBothy.design(), 40);
        assertEquals(List.of(), codes(Cautions.of(steady(SafeBothy.design().withCoilHeatKW(3), 40))));
        assertEquals(List.of(), codes(Cautions.of(usual.withHarder(List.of(HarderCase.tankAt(40, usual.lit()))))));
        assertEquals(List.of(), codes(Cautions.of(usual.withYear(new YearFacts(91, 4, 91, -11, 6.9)))));
        assertEquals(List.of(), codes(Cautions.of(usual.withFire(new FireFacts(190, 122, 10.8)))));
        assertEquals(List.of(), codes(Cautions.of(full(SafeBothy.design()).withSinging(OptionalDouble.of(75.1)))));
        // A degree more than told: what layers blur is in the verdict.
        assertEquals(
                List.of("LC-SING"), codes(Cautions.of(full(SafeBothy.design()).withSinging(OptionalDouble.of(74.9)))));
        assertEquals(List.of(), codes(Cautions.of(usual.withWeeks(dull(7, 0.49)))));
        assertEquals(List.of("LC-DULL-WEEK"), codes(Cautions.of(usual.withWeeks(dull(7, 0.497)))));
        CautionFacts warm = usual.withYear(new YearFacts(85, 4, 85, -11, 2));
        assertEquals(List.of(), codes(Cautions.of(warm.withWeeks(clear(91)))));
        assertEquals(List.of("LC-BOIL-TANK"), codes(Cautions.of(warm.withWeeks(clear(93)))));
    }

    /** Application class 2 of ISO 10508, from memory: 80 °C. */
    @Test
    void aPlasticDrawPipeIsJudgedByTheHottestWater() {
        CautionFacts facts = full(plasticDrawPipe("true"));
        assertEquals(List.of(), codes(Cautions.of(facts.withYear(new YearFacts(78, 12, 78, -11, 2)))));
        assertEquals(List.of("LC-PLASTIC"), codes(Cautions.of(facts.withYear(new YearFacts(80, 12, 80, -11, 2)))));
        assertEquals(
                List.of("safety.materials.plasticPipes"),
                Cautions.of(full(plasticDrawPipe("null"))).asks().stream()
                        .map(Ask::field)
                        .toList());
    }

    private static Design plasticDrawPipe(String hotWater) {
        return SafeBothy.with(
                "/safety/materials/plasticPipes",
                "[{\"name\": \"tap run\", \"inLoop\": false, \"fromHeaterM\": 5, \"hotWater\": " + hotWater + "}]");
    }

    /** A coil that hardly rises, then forty metres of bare pipe through a cool cellar: what rises to the tank is cold. */
    private static Design chilledRiser() {
        String legs =
                """
                [{"name": "through the cellar", "tube": "EN1057 22x0.9", "lengthM": 40, "riseM": 0.85, "aroundC": 5},
                 {"name": "up to the tank", "tube": "EN1057 22x0.9", "lengthM": 2.5, "riseM": 1.3, "aroundC": 5}]
                """;
        return SafeBothy.edited(
                List.of("/coil/outletM", "0.4", "/coil/heatKW", "0.05", "/hotLegs", legs, "/site/coldestNightC", "2"));
    }

    /** The tables end at 160 °F (71.1 °C), 0.5 s: above it the time is an upper bound and must not read as a measured one. */
    @Test
    void waterHotterThanTheTableBurnsInLessThanItsLastTime() {
        Caution scald = Cautions.of(
                        full(SafeBothy.with("/taps/0/mixerC", "null")).withYear(new YearFacts(75, 12, 75, -11, 2)))
                .cautions()
                .stream()
                .filter(caution -> caution.code().equals("LC-SCALD"))
                .findFirst()
                .orElseThrow();
        assertTrue(scald.text().contains("in less than 0.5"), scald.text());
    }

    /** A cold month's mean only hints at frost; the coldest night that is known decides. */
    @Test
    void anEmptyHouseFreezesWhereItsColdestNightDoes() {
        Design empty = SafeBothy.with("/safety/absence", "{\"months\": [1, 2], \"drained\": false}");
        assertEquals(List.of(), codes(Cautions.of(full(Changes.apply(empty, "site.coldestNightC", "4")))));
        assertEquals(
                List.of("LC-FROST-EMPTY"), codes(Cautions.of(full(Changes.apply(empty, "site.coldestNightC", "-9")))));
    }

    /** Where nobody says what the plate asks, the farther of the common distances counts. */
    @Test
    void aDistanceThatNobodyAskedForIsJudgedByItsDangerousEnd() {
        Design unsaid = SafeBothy.edited(
                List.of("/safety/flue/flueNeedsMm", "null", "/safety/flue/flueToCombustibleMm", "456"));
        assertEquals(List.of("LC-FLUE-NEAR"), codes(Cautions.of(full(unsaid))));
        assertEquals(List.of(), codes(Cautions.of(full(Changes.apply(unsaid, "safety.flue.flueNeedsMm", "450")))));
    }

    @Test
    void childrenAreScaldedSooner() {
        CautionFacts adults = full(SafeBothy.with("/taps/0/mixerC", "47"));
        assertEquals(List.of(), codes(Cautions.of(adults)));
        Design children = SafeBothy.edited(List.of("/taps/0/mixerC", "47", "/safety/childrenOrFrail", "true"));
        assertEquals(List.of("LC-SCALD"), codes(Cautions.of(full(children))));
        Design unsaid = SafeBothy.edited(List.of("/taps/0/mixerC", "47", "/safety/childrenOrFrail", "null"));
        assertEquals(
                List.of("safety.childrenOrFrail"),
                Cautions.of(full(unsaid)).asks().stream().map(Ask::field).toList());
    }

    @Test
    void theScaldTextGivesTheTimeToABurn() {
        CautionFacts facts = full(SafeBothy.with("/taps/0/mixerC", "60"));
        String text = Cautions.of(facts).cautions().get(0).text();
        assertTrue(text.contains("60 °C reaches 'kitchen sink'") && text.contains("5.0 s"), text);
    }

    /** A month of six degrees has frosty nights; whether they freeze the house is a guess until somebody says how cold it gets. */
    @Test
    void aMonthThatIsMildInTheMeanMayFreezeAnEmptyHouse() {
        Design march = SafeBothy.with("/safety/absence", "{\"months\": [3], \"drained\": false}");
        Caution guess = only(march, "LC-FROST-EMPTY");
        assertEquals(Severity.WARNING, guess.severity());
        assertEquals(
                Severity.DANGER,
                only(Changes.apply(march, "site.coldestNightC", "-22"), "LC-FROST-EMPTY")
                        .severity());
        assertEquals(List.of(), codes(Cautions.of(full(Changes.apply(march, "site.coldestNightC", "-4")))));
    }

    /** A loft of seven degrees on a usual winter day is none on the coldest night. */
    @Test
    void aLegInAColdLoftFreezesOnTheColdestNight() {
        Design loft = Changes.apply(SafeBothy.design(), "hotLegs[1].aroundC", "7");
        Caution guess = only(loft, "LC-FROST-LOOP");
        assertEquals(Severity.WARNING, guess.severity());
        assertTrue(guess.text().contains("after about"), guess.text());
        assertEquals(
                List.of("site.coldestNightC"),
                Cautions.of(full(loft)).asks().stream().map(Ask::field).toList());
        Design said = Changes.apply(loft, "site.coldestNightC", "-14");
        assertEquals(Severity.DANGER, only(said, "LC-FROST-LOOP").severity());
        assertEquals(List.of(), Cautions.of(full(said)).asks());
        assertEquals(List.of(), codes(Cautions.of(full(Changes.apply(loft, "site.coldestNightC", "-3")))));
    }

    private static Caution only(Design design, String code) {
        CautionReport report = Cautions.of(full(design));
        assertEquals(List.of(code), codes(report));
        return report.cautions().get(0);
    }

    /** Nothing heats a coil without heat: still water is then no danger. */
    @Test
    void aStandingLoopWithoutFireIsNoDanger() {
        assertEquals(List.of(), codes(Cautions.of(steady(SafeBothy.design().withCoilHeatKW(0), 40))));
    }

    @Test
    void everyCautionOfTheTableIsRaisedByATest() {
        Set<String> raised = Stream.concat(changes(), otherFacts())
                .map(one -> (String) one.get()[0])
                .collect(Collectors.toCollection(TreeSet::new));
        assertEquals(
                Stream.of(CautionKind.values()).map(CautionKind::code).collect(Collectors.toCollection(TreeSet::new)),
                raised);
    }

    /** What the drawing alone says on the start, whatever a march finds. */
    @Test
    void aLevelCoilAndALevelRunBesideALowOneAreDangersAndALevelColdLegIsNone() {
        assertEquals(List.of("LC-AIR"), codes(Cautions.of(full(coilRising(0)))));
        assertEquals(List.of(), codes(Cautions.of(full(coilRising(0.25)))));
        assertEquals(List.of("LC-AIR", "LC-FLAT"), codes(Cautions.of(full(levelHot()))));
        Design levelCold = SafeBothy.edited(
                List.of("/coldLegs/0/riseM", "-1.9", "/coldLegs/0/lengthM", "2", "/coldLegs/1/riseM", "0"));
        assertEquals(List.of("LC-FLAT"), codes(Cautions.of(full(levelCold))));
    }

    /** A stall that only a march without counterflow sees is no alarm. */
    @Test
    void waterThatStandsOnlyWithoutCounterflowIsNoAlarm() {
        CautionFacts usual = full(SafeBothy.design());
        Start stall = new Start(
                OptionalDouble.of(8),
                60,
                Counterflow.NONE,
                StartEnd.BOILS,
                OptionalDouble.empty(),
                OptionalDouble.of(6),
                10,
                104,
                true,
                0.001);
        assertEquals(List.of(), codes(Cautions.of(usual.withStarts(new Starts(List.of(stall))))));
    }

    private static Design coilRising(double riseM) {
        return SafeBothy.edited(List.of(
                "/coil/outletM", Double.toString(0.35 + riseM),
                "/hotLegs/0/riseM", Double.toString(1.85 - riseM),
                "/hotLegs/0/lengthM", "2"));
    }

    /** A quarter of a metre of rise in the coil, then a level run on the way to the tank. */
    static Design levelHot() {
        return SafeBothy.edited(List.of(
                "/coil/outletM",
                "0.6",
                "/hotLegs/0/riseM",
                "1.95",
                "/hotLegs/0/lengthM",
                "2",
                "/hotLegs/1/riseM",
                "0"));
    }

    private static Starts wrong(OptionalDouble gapH, StartEnd end) {
        return new Starts(List.of(start(gapH, Counterflow.SOME, end, 3), start(gapH, Counterflow.FULL, end, 3)));
    }

    private static Start start(OptionalDouble gapH, Counterflow counterflow, StartEnd end, double boilingMin) {
        return new Start(
                gapH,
                60,
                counterflow,
                end,
                end == StartEnd.FORWARD ? OptionalDouble.of(40) : OptionalDouble.empty(),
                boilingMin > 0 ? OptionalDouble.of(6) : OptionalDouble.empty(),
                boilingMin,
                104,
                gapH.isEmpty() || gapH.getAsDouble() > 0.5,
                end == StartEnd.BACKWARD ? -0.9 : 1);
    }

    /** A hole of the wrong kind, or one left open, is a fault as soon as its sentence is said. */
    @Test
    void everySentenceIsSaidOfSomeDesign() {
        Design safe = SafeBothy.design();
        CautionFacts usual = full(safe);
        List<CautionFacts> more = List.of(
                usual.withStarts(wrong(OptionalDouble.of(0.25), StartEnd.BOILS)),
                usual.withStarts(new Starts(List.of(
                        start(OptionalDouble.empty(), Counterflow.SOME, StartEnd.SWINGS, 0),
                        start(OptionalDouble.empty(), Counterflow.FULL, StartEnd.SWINGS, 0)))),
                usual.withStarts(
                        new Starts(List.of(start(OptionalDouble.of(0.25), Counterflow.SOME, StartEnd.BACKWARD, 0)))),
                usual.withStarts(
                        new Starts(List.of(start(OptionalDouble.of(1), Counterflow.SOME, StartEnd.FORWARD, 0)))),
                full(coilRising(0)),
                full(levelHot()),
                full(SafeBothy.edited(List.of(
                        "/safety/coldFeed", "{\"kind\": \"by hand\", \"drinkingWater\": false, \"valve\": true}"))),
                full(SafeBothy.with("/safety/coldFeed/airGapMm", "null")),
                full(SafeBothy.edited(List.of("/taps/0/mixerC", "47", "/safety/childrenOrFrail", "null"))),
                full(SafeBothy.edited(List.of("/taps/0/mixerC", "47", "/safety/childrenOrFrail", "true"))),
                full(SafeBothy.with("/taps/0/mixerC", "70")),
                full(SafeBothy.edited(List.of("/taps/0/mixerC", "60", "/safety/childrenOrFrail", "true"))),
                full(SafeBothy.with("/hotLegs/0/fittings", "{\"ball\": 1}")),
                full(ofSteel()),
                full(Changes.apply(Example.orchardBothy(), "coldFeed.kind", "float valve")),
                full(SafeBothy.with("/safety/coldFeed/overflowBoreMm", "null")),
                full(SafeBothy.with("/safety/coldFeed/plasticCistern", "null")),
                full(SafeBothy.edited(List.of("/coil/heatKW", "8", "/safety/coldFeed/kind", "\"by hand\""))),
                full(SafeBothy.with("/tank/drawPortM", "0.2")),
                full(Changes.apply(safe, "site.hardnessMgPerL", "92")),
                full(plasticDrawPipe("null")),
                full(plasticDrawPipe("true")).withYear(new YearFacts(85, 12, 85, -11, 2)),
                usual.withHarder(
                        List.of(HarderCase.tankAt(70, chilledRiser().circuit(40).search()))),
                usual.withYear(new YearFacts(45, 12, 45, -11, 40)),
                full(SafeBothy.edited(
                                List.of("/taps/0/mixerC", "null", "/taps/1/mixerC", "null", "/taps/2/mixerC", "null")))
                        .withYear(new YearFacts(60, 12, 60, -11, 365)),
                usual.withYear(new YearFacts(45, 12, 45, -11, 40)).withWeeks(clear(70)),
                full(Changes.apply(safe, "hotLegs[1].aroundC", "7")),
                full(Changes.apply(Changes.apply(safe, "hotLegs[1].aroundC", "7"), "site.coldestNightC", "-7.5")),
                full(Changes.apply(Changes.apply(safe, "hotLegs[1].aroundC", "0"), "site.coldestNightC", "-20")),
                full(Changes.apply(safe, "tank.aroundC", "4")),
                full(Changes.apply(Changes.apply(safe, "tank.aroundC", "4"), "site.coldestNightC", "-20")),
                full(SafeBothy.with("/safety/absence", "{\"months\": [3], \"drained\": false}")),
                full(SafeBothy.with("/taps/0/mixerC", "null"))
                        .withYear(new YearFacts(45, 12, 45, -11, 2))
                        .withWeeks(clear(97)),
                usual.withWeeks(dull(1, 0.6)),
                full(SafeBothy.with("/fire", "null")).withWeeks(dull(7, 0.6)),
                usual.withFire(new FireFacts(180, 95, 6)),
                full(SafeBothy.with("/window", "null")).withYear(new YearFacts(74, 1, 74, -11, 2)),
                steady(Example.orchardBothy(), 40));
        Set<String> said = new TreeSet<>();
        Stream.of(
                        changes().map(one -> full(SafeBothy.edited(edits(one)))),
                        otherFacts().map(one -> (CautionFacts) one.get()[1]),
                        more.stream())
                .flatMap(facts -> facts)
                .forEach(facts -> said.addAll(SaidCodes.of(Cautions.of(facts))));
        Set<String> never = new TreeSet<>(CautionKind.SENTENCES.codes());
        never.removeAll(said);
        never.removeIf(code -> code.endsWith(".source"));
        assertEquals(Set.of(), never);
    }

    /** Where a feed makes up what is drawn, it takes a feed that fails besides: told, but milder than a tank filled by hand. */
    @Test
    void aDrawPortBelowTheReturnPortIsToldWhateverFillsTheTank() {
        List<Caution> fed =
                Cautions.of(full(SafeBothy.with("/tank/drawPortM", "0.2"))).cautions();
        assertEquals(List.of("LC-DRY-DRAW"), fed.stream().map(Caution::code).toList());
        assertEquals(Severity.WARNING, fed.get(0).severity());
        assertTrue(
                fed.get(0).text().contains("where the feed fails"), fed.get(0).text());
    }

    private static Design ofSteel() {
        Design loop = Changes.apply(SafeBothy.design(), "loop.tube", "26.9x2.6 steel");
        return Changes.apply(loop, "taps.tube", "26.9x2.6 steel");
    }

    /** Plain steel goes in fresh water with copper beside it and without; stainless does neither. */
    @Test
    void theMetalOfTheTubesIsJudged() {
        assertTrue(codes(Cautions.of(full(ofSteel()))).contains("LC-METALS"));
        Design stainless = Changes.apply(SafeBothy.design(), "coil.tube", "22x1.2 stainless");
        assertEquals(codes(Cautions.of(full(SafeBothy.design()))), codes(Cautions.of(full(stainless))));
    }

    @SuppressWarnings("unchecked")
    static List<String> edits(Arguments change) {
        return (List<String>) change.get()[1];
    }

    static CautionFacts full(Design design) {
        return steady(design, 40).withYear(MILD_YEAR).withFire(WARM_FLUE);
    }

    static CautionFacts steady(Design design, double tankC) {
        Circuit circuit = design.circuit(tankC);
        return CautionFacts.steady(design, circuit, circuit.search());
    }

    static List<String> codes(CautionReport report) {
        return report.cautions().stream().map(Caution::code).toList();
    }

    private static Arguments change(String code, String... edits) {
        return Arguments.of(code, List.of(edits));
    }

    /** A limit is what is still allowed: only what passes it is told. */
    @Test
    void whatStandsJustAtALimitRaisesNothing() {
        Design safe = SafeBothy.design();
        double gapMm = BackSiphonage.leastAirGapMm(13);
        assertEquals(List.of(), codes(Cautions.of(full(gap(gapMm)))));
        assertEquals(List.of("LC-BACKFLOW"), codes(Cautions.of(full(gap(gapMm - 0.1)))));

        double mostC = LaggingTable.find("elastomeric foam").orElseThrow().serviceLimitC();
        assertFalse(codes(Cautions.of(full(foam(safe, 13, mostC)))).contains("LC-LAGGING-HOT"));
        assertTrue(codes(Cautions.of(full(foam(safe, 13, mostC + 0.1)))).contains("LC-LAGGING-HOT"));
        assertFalse(codes(Cautions.of(full(foam(safe, 0, mostC + 50)))).contains("LC-LAGGING-HOT"));
    }

    private static Design gap(double gapMm) {
        return SafeBothy.with("/safety/coldFeed/airGapMm", Double.toString(gapMm));
    }

    private static Design foam(Design safe, double thicknessMm, double aroundC) {
        Leg flue = safe.hotLegs().get(0);
        Leg foam = new Leg(
                flue.name(),
                flue.tube(),
                flue.lengthM(),
                flue.riseM(),
                flue.fittings(),
                Optional.of(new LaggingChoice("elastomeric foam", thicknessMm)),
                aroundC,
                flue.aroundFireOutC());
        return safe.withLegs(safe.coldLegs(), List.of(foam, safe.hotLegs().get(1)));
    }

    /** The water has to stand half the bore and the usual cover above the middle of the port. */
    @Test
    void theReturnPortIsCoveredFromItsUpperEdge() {
        Design safe = SafeBothy.design();
        double boreM = TubeTable.require("tube", safe.hotLegs().get(1).tube()).boreM();
        double leastM = safe.tank().returnPortM() + boreM / 2 + SafeLevel.USUAL_COVER_M;
        assertFalse(codes(Cautions.of(full(level(leastM + 1e-6)))).contains("LC-DRY-COVER"));
        assertTrue(codes(Cautions.of(full(level(leastM - 1e-3)))).contains("LC-DRY-COVER"));
    }

    private static Design level(double waterlineM) {
        return SafeBothy.edited(List.of(
                "/tank/waterlineM",
                Double.toString(waterlineM),
                "/tank/drawPortM",
                Double.toString(waterlineM - 0.01)));
    }
}
