package loftcoil.runner.show;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import loftcoil.engine.design.DesignField;
import loftcoil.engine.design.DesignFields;
import loftcoil.engine.fault.RefusedException;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What people type into a survey. The inch is 25.4 mm, the US gallon 231 cubic inches, the pound 0.45359237 kg by definition. */
class TypedTest {

    private static String text(String path, String typed) {
        return Typed.text(DesignFields.at(path).orElseThrow(), path, typed);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "tank.baseM | 2.2 | 2.2",
                "tank.baseM | 2,2 m | 2.2",
                "tank.baseM | 220 cm | 2.2",
                "tank.baseM | 7 ft 4 | 2.2352",
                "tank.baseM | 7' 4 1/2 | 2.2479",
                "tank.baseM | -3 in | -0.0762",
                "tank.volumeL | 32 gal | 121.133177",
                "site.roomC | 68 °F | 20",
                "fire.burnKgPerH | 3 lb/h | 1.36077711",
                "safety.coldFeed.boreMm | 3/4 in | 19.05",
                "site.latitudeDeg | -42.5 | -42.5",
                "fire.burnKgPerH | 3 lb | 1.36077711",
                "tank.baseM | 7 ft 4 in | 2.2352",
                "site.latitudeDeg | 42.5 S | -42.5",
                "site.latitudeDeg | S 42.5° | -42.5",
                "site.latitudeDeg | 42° 30' S | -42.5",
                "site.longitudeDeg | 146° 45' 36\" E | 146.76",
                "site.longitudeDeg | 7.25 degrees west | -7.25",
                "window.tiltDeg | 40° | 40",
                "window.tiltDeg | 40 degrees | 40",
                "window.azimuthDeg | N | 0",
                "window.azimuthDeg | south-east | 135",
                "window.azimuthDeg | 185 | 185",
                "window.panes | two | 2",
                "coil.tube | 22x1.0 copper | 22x1.0 copper",
                "coil.tube | 22 x 1 mm copper | 22x1 copper",
                "fire.months | 5 6 7 8 9 | 5, 6, 7, 8, 9",
                "fire.months | April to September | 4, 5, 6, 7, 8, 9",
                "fire.months | Oct-Mar | 10, 11, 12, 1, 2, 3",
                "fire.months | May, june and 8 | 5, 6, 8",
                "safety.absence.months | none | ''",
                "safety.materials.inLoop | none | ''",
                "safety.materials.inLoop | brass | brass",
                "coil.tube | 22 mm × 1 mm | 22x1",
                "coil.tube | EN1057 22x0.9 | EN1057 22x0.9",
                "safety.childrenOrFrail | yes | true",
                "tank.baseM | seven foot four | 2.2352",
                "tank.baseM | 3 in below the floor | -0.0762",
                "tank.lengthM | none | not said",
                "tank.refillAtH | never | not said",
                "tank.refillAtH | none | not said",
                "safety.coldFeed.overflowBoreMm | none | 0",
                "safety.structure.bearers | none | 0",
                "fire.litFromH | half past six in the evening | 18.5",
                "fire.litAgainFromH | 7 in the evening | 19",
                "fire.months | May through September | 5, 6, 7, 8, 9",
                "fire.months | all year | 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12",
                "window.azimuthDeg | NNE | 22.5",
                "window.azimuthDeg | facing west-southwest | 247.5",
                "site.longitudeDeg | 173 50 E | 173.833333",
                "site.longitudeDeg | 173° 50.5' W | -173.841667",
                "site.latitudeDeg | 41 degrees 15 minutes south | -41.25",
                "site.coldestNightC | 12 below zero | -12",
                "site.coldestNightC | ten °F below | -23.3333333",
                "site.hardnessMgPerL | 7 grains | 119.826427",
                "site.hardnessMgPerL | 7 grains per gallon | 119.826427",
                "window.areaM2 | 34 x 76 inches | 1.66709344",
                "window.areaM2 | 1.2 m × 0,8 m | 0.96",
                "window.areaM2 | 2 of 3 ft by 4 ft | 2.22967296",
                "window.areaM2 | 2 x 3 x 4 ft | 2.22967296",
                "safety.fireRoom.airOpeningCm2 | 10 by 15 cm | 150",
                "safety.structure.wheels.tankAheadM | 3 ft behind | -0.9144",
                "safety.structure.wheels.axleLimitKg | 2 x 1500 kg | 3000",
                "site.monthly.meanAirC | 1,5 2 3 4 5 6 7 8 9 10 11 12 | 1.5, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12",
                "site.monthly.meanAirC | 1,5; 2; 3; 4; 5; 6; 7; 8; 9; 10; 11; -1 | 1.5, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, -1",
                "coil.tube | 3/4 in type M | B88 M 3/4",
                "coil.tube | three-quarter inch type L copper | B88 L 3/4",
                "coil.tube | Type K 1 1/4\" | B88 K 1-1/4",
                "coil.tube | ¾ L | B88 L 3/4",
                "tank.lagging.material | fiberglass | glass wool",
                "tank.lagging.material | rubber foam | elastomeric foam",
                "tank.shape | box | box",
            })
    void isTakenInAnyFittingUnit(String path, String typed, String text) {
        assertEquals(text, text(path, typed));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "falls 1/4 in per ft | -20.8333333333",
                "1/2 in per ft | 41.6666666667",
                "falls 1 in 40 | -25",
                "1 in 40 down | -25",
                "rises 20 mm/m | 20",
                "20 mm/m | 20",
                "1 in 50 | 20",
                "-1 in 40 | -25",
                "1:50 | 20",
                "2 % | 20",
                "0 | 0",
                "-15 | -15"
            })
    void aSlopeIsReadAsItIsSaid(String typed, double mmPerM) {
        assertEquals(mmPerM, Typed.slopeMmPerM(typed, "slope"), 1e-9);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "tank.baseM | 3 kg",
                "tank.baseM | high",
                "site.latitudeDeg | 42.5 E",
                "site.latitudeDeg | -42.5 S",
                "site.longitudeDeg | 7 N",
                "window.tiltDeg | 40 mm",
                "window.azimuthDeg | uphill",
                "safety.structure.loadLimitKg | none",
                "site.coldSupplyC | none",
                "tank.baseM | 3 ft x 4 ft",
                "tank.baseM | a few feet",
                "tank.baseM | seven thirty",
                "fire.months | ju",
                "fire.months | juny",
                "tank.volumeL | 7 ft 4",
                "site.roomC | 5 6",
                "tank.baseM | 2 to 3 m"
            })
    void whatDoesNotFitIsRefusedWithItsPlace(String path, String typed) {
        RefusedException refused = assertThrows(RefusedException.class, () -> text(path, typed));

        assertEquals(path, refused.faults().get(0).path());
        assertTrue(
                refused.faults().get(0).given().contains(typed), refused.lines().toString());
    }

    /** Whoever holds a level to a pipe reads how much higher its far end is, not a slope. */
    @ParameterizedTest
    @CsvSource({
        "30 cm, 200",
        "rises 30 cm, 200",
        "falls 3 cm, -20",
        "30 mm, 20",
        "4 in, 67.7333",
        "1 in 50, 20",
        "20 mm/m, 20",
        "level, 0"
    })
    void aRiseIsASlopeOverTheLengthOfItsPiece(String typed, double mmPerM) {
        assertEquals(mmPerM, Typed.slopeMmPerM(typed, 1.5, "slope"), 1e-3);
    }

    @ParameterizedTest
    @CsvSource({
        "7, 7, 7",
        "every day, 7, 7",
        "daily, 1, 1",
        "twice a day, 1, 2",
        "twice a day, 7, 14",
        "three times a week, 7, 3",
        "3x a week, 7, 3",
        "every other day, 7, 3.5",
        "once a month, 7, 0.230137",
        "2 a fortnight, 7, 1",
        "never, 7, 0",
        "none, 7, 0"
    })
    void howOftenIsSaidAsPeopleSayIt(String typed, double days, double times) {
        assertEquals(times, Typed.howOften(typed, days, "habit"), 1e-6);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"two of us | 2", "2 adults and a child | 3", "just me | 1", "a family of five | 5", "4 | 4"})
    void peopleAreCounted(String typed, double people) {
        assertEquals(people, Typed.people(typed, "people"));
    }

    @ParameterizedTest
    @CsvSource({"GMT, 0", "UTC+1, 1", "gmt -3, -3", "10, 10", "minus 5, -5"})
    void aClockIsToldAsClocksTellIt(String typed, String hours) {
        DesignField field = DesignFields.at("site.utcOffsetH").orElseThrow();
        assertEquals(hours, Typed.text(field, "site.utcOffsetH", typed));
    }
}
