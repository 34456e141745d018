package loftcoil.engine.caution;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import loftcoil.engine.design.Changes;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.Example;
import loftcoil.engine.design.SafeBothy;
import loftcoil.engine.sheet.SafetyVerdict;
import loftcoil.engine.start.RandomLoops;
import loftcoil.engine.words.SaidCodes;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Every sentence on a danger is reached by a design, through its own year and its own starts. {@link CautionsTest} says the same of facts
 * made by hand; a sentence that no design can bring about would pass there.
 */
@Tag("thorough")
class SaidOfDesignsTest {

    private static final Design SAFE = SafeBothy.design();

    /** What the drawing, the site and the safety part say; judged without year and starts. */
    private static Stream<Design> drawn() {
        return Stream.of(
                SAFE,
                Example.orchardBothy(),
                Changes.apply(Example.orchardBothy(), "coldFeed.kind", "float valve"),
                SafeBothy.unwheeled().withTankBaseM(-1.5),
                Changes.apply(Changes.apply(SAFE, "fire.burnKgPerH", "20"), "loop.tube", "EN1057 15x1.0")
                        .withCoilHeatKW(20),
                Changes.apply(SAFE, "coil.ends", "the upper end"),
                edited("/coil/outletM", "0.35", "/hotLegs/0/riseM", "1.85", "/hotLegs/0/lengthM", "2"),
                CautionsTest.levelHot(),
                edited("/hotLegs/0/riseM", "2.0", "/hotLegs/0/lengthM", "2.1", "/hotLegs/1/riseM", "-0.2"),
                edited("/coldLegs/0/riseM", "-2.0", "/coldLegs/0/lengthM", "2.1", "/coldLegs/1/riseM", "0.1"),
                edited("/hotLegs/0/riseM", "2.4", "/hotLegs/0/lengthM", "2.6", "/hotLegs/1/riseM", "-0.6"),
                Changes.apply(SAFE, "loop.slopeMmPerM", "5"),
                edited("/hotLegs/0/fittings", "{\"ball\": 1}"),
                edited("/safety/coldFeed", "{\"kind\": \"by hand\", \"drinkingWater\": false, \"valve\": true}"),
                edited("/safety/coldFeed/airGapMm", "null"),
                edited("/safety/coldFeed/overflowBoreMm", "null"),
                edited("/safety/coldFeed/plasticCistern", "null"),
                edited("/taps/0/mixerC", "47", "/safety/childrenOrFrail", "null"),
                edited("/taps/0/mixerC", "47", "/safety/childrenOrFrail", "true"),
                edited("/taps/0/mixerC", "60", "/safety/childrenOrFrail", "true"),
                edited("/coil/heatKW", "8", "/safety/coldFeed/kind", "\"by hand\""),
                edited("/tank/drawPortM", "0.2"),
                steel(),
                plastic("null"),
                Changes.apply(SAFE, "site.hardnessMgPerL", "92"),
                chilledRiser("0.05"),
                Changes.apply(SAFE, "hotLegs[1].aroundC", "7"),
                Changes.apply(Changes.apply(SAFE, "hotLegs[1].aroundC", "7"), "site.coldestNightC", "-7.5"),
                Changes.apply(Changes.apply(SAFE, "hotLegs[1].aroundC", "0"), "site.coldestNightC", "-20"),
                Changes.apply(SAFE, "tank.aroundC", "4"),
                Changes.apply(Changes.apply(SAFE, "tank.aroundC", "4"), "site.coldestNightC", "-20"),
                edited("/safety/absence", "{\"months\": [3], \"drained\": false}"),
                edited("/hotLegs/1/lagging", "null"));
    }

    /** What only a year or a start tells. */
    private static Stream<Design> marched() {
        return Stream.of(
                SAFE,
                Example.orchardBothy(),
                plastic("true"),
                edited("/taps/0/mixerC", "47", "/safety/childrenOrFrail", "null"),
                edited("/taps/0/mixerC", "47", "/safety/childrenOrFrail", "true"),
                edited("/taps/0/mixerC", "60", "/safety/childrenOrFrail", "true"),
                edited("/window/areaM2", "0.7", "/fire", "null", "/coil/heatKW", "0", "/taps/0/mixerC", "null"),
                edited(
                        "/window/areaM2",
                        "0.7",
                        "/fire",
                        "null",
                        "/coil/heatKW",
                        "0",
                        "/taps/0/mixerC",
                        "null",
                        "/use",
                        "[]"),
                edited("/window", "null", "/site/coldSupplyC", "1", "/tank/aroundC", "4"),
                edited(
                        "/fire",
                        "null",
                        "/coil/heatKW",
                        "0",
                        "/tank/aroundC",
                        "5",
                        "/window/areaM2",
                        "2",
                        "/window/panes",
                        "1",
                        "/window/toughened",
                        "1",
                        "/site/monthly/meanAirC",
                        "[-24,-22,-15,-5,2,8,10,8,3,-4,-14,-22]"),
                edited("/hotLegs/0/aroundC", "160", "/hotLegs/0/lagging/material", "\"elastomeric foam\""),
                edited("/fire/burnKgPerH", "0.7"),
                edited("/coil/heatKW", "1.2"),
                edited("/window", "null", "/coil/heatKW", "0.15"),
                edited("/window", "null", "/coil/heatKW", "1.15"),
                edited("/window", "null", "/coil/heatKW", "1.3"),
                edited("/window/areaM2", "1.5", "/coil/heatKW", "0.05", "/fire/months", "[1,2,3,4,5,6,7,8,9,10,11,12]"),
                RandomLoops.some(1, 20261129).get(0),
                RandomLoops.some(7, 20261129).get(6),
                chance(1, 7, "0.048", "EN1057 22x0.9", "EN1057 22x0.9"),
                chance(1, 17, "0.061", "EN1057 22x0.9", "EN1057 22x0.9"),
                chance(1, 23, "0.048", "EN1057 35x1.2", "EN1057 35x1.2"),
                chance(2, 14, "0.589", "EN1057 22x0.9", "EN1057 15x0.7"));
    }

    /** What a start does on a tank of 40 and 60 °C, where on the year's hottest it does worse. */
    private static Stream<Design> started() {
        return Stream.of(RandomLoops.some(8, 20261129).get(7));
    }

    private static Design chance(long seed, int which, String heatKW, String cold, String hot) {
        Design loop = RandomLoops.some(which + 1, seed).get(which);
        Design heated = Changes.apply(loop, "coil.heatKW", heatKW);
        return Changes.apply(Changes.apply(heated, "coldLegs[0].tube", cold), "hotLegs[0].tube", hot);
    }

    private static Design edited(String... edits) {
        return SafeBothy.edited(List.of(edits));
    }

    private static Design steel() {
        return Changes.apply(Changes.apply(SAFE, "loop.tube", "26.9x2.6 steel"), "taps.tube", "26.9x2.6 steel");
    }

    private static Design plastic(String hotWater) {
        return edited(
                "/safety/materials/plasticPipes",
                "[{\"name\": \"tap run\", \"inLoop\": false, \"fromHeaterM\": 5, \"hotWater\": " + hotWater + "}]");
    }

    /** A coil that hardly rises, then forty metres of bare pipe through a cool cellar: what rises to the tank is cold. */
    private static Design chilledRiser(String heatKW) {
        String legs =
                """
                [{"name": "through the cellar", "tube": "EN1057 22x0.9", "lengthM": 40, "riseM": 0.85, "aroundC": 5},
                 {"name": "up to the tank", "tube": "EN1057 22x0.9", "lengthM": 2.5, "riseM": 1.3, "aroundC": 5}]
                """;
        return edited("/coil/outletM", "0.4", "/coil/heatKW", heatKW, "/hotLegs", legs, "/site/coldestNightC", "2");
    }

    @Test
    void everySentenceIsReachedByADesign() {
        Set<String> never = new TreeSet<>(CautionKind.SENTENCES.codes());
        never.removeIf(code -> code.endsWith(".source"));
        Stream.of(
                        CautionsTest.changes()
                                .map(one -> SafetyVerdict.quick(SafeBothy.edited(CautionsTest.edits(one)))),
                        drawn().map(SafetyVerdict::quick),
                        started().map(SafetyVerdict::withoutYear),
                        marched().map(SafetyVerdict::whole))
                .flatMap(verdicts -> verdicts)
                .forEach(verdict -> never.removeAll(SaidCodes.of(verdict.report())));
        assertEquals(Set.of(), never);
    }
}
