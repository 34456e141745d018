package loftcoil.engine.build;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import loftcoil.engine.build.Fixings.Hold;
import loftcoil.engine.build.Fixings.Turn;
import loftcoil.engine.design.Changes;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.Dwelling;
import loftcoil.engine.design.Example;
import loftcoil.engine.design.Leg;
import loftcoil.engine.pipe.Tube;
import loftcoil.engine.pipe.TubeTable;
import loftcoil.engine.sheet.Headings;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Clips against a published table, growth against a handbook value, bends against plane geometry. */
class FixingsReferenceTest {

    private static Tube tube(String name) {
        return TubeTable.require("tube", name);
    }

    private static Hold hold(Fixings fixings, String mark) {
        return fixings.holds().stream()
                .filter(one -> one.mark().equals(mark))
                .findFirst()
                .orElseThrow();
    }

    /** International Mechanical Code, table 305.4, as restated in public: copper to 1 1/4 in, 6 ft lying and 10 ft upright at most. */
    @ParameterizedTest
    @CsvSource({"15x0.7", "22x0.9", "28x0.9", "35x1.0"})
    void clipsStandNoFartherApartThanTheCodeAllows(String size) {
        assertTrue(ClipSpacing.metres(tube("EN1057 " + size), false) <= 6 * 0.3048);
        assertTrue(ClipSpacing.metres(tube("EN1057 " + size), true) <= 10 * 0.3048);
    }

    /** Sprinkler maker's table for copper and stainless steel, as restated in public: 22 mm 1.8 m lying and 2.4 m upright. */
    @Test
    void clipsOfTwentyTwoMillimetresAsInTheTable() {
        assertEquals(1.8, ClipSpacing.metres(tube("EN1057 22x0.9"), false), 1e-9);
        assertEquals(2.4, ClipSpacing.metres(tube("EN1057 22x0.9"), true), 1e-9);
    }

    /**
     * Copper Tube Handbook (CDA A4015), from memory: 1.1 in for each 100 ft and 100 °F, which is 16.5e-6 a kelvin; a tube of 10 m
     * warmed by 90 K grows 15 mm.
     */
    @Test
    void copperGrowsByAThousandthAndAHalf() {
        Design bothy = Example.orchardBothy();
        for (Leg leg : bothy.hotLegs()) {
            Hold hold = FixingsMaker.of(bothy, Headings.UNKNOWN).holds().stream()
                    .filter(one -> one.leg().equals(leg.name()))
                    .findFirst()
                    .orElseThrow();
            assertEquals(15 * leg.lengthM() / 10, hold.growth().value(), 0.05 * 15 * leg.lengthM() / 10, leg.name());
        }
    }

    private static Leg leg(String name, double lengthM, double riseM) {
        return new Leg(name, "EN1057 22x0.9", lengthM, riseM, Map.of(), Optional.empty(), 20, OptionalDouble.empty());
    }

    private static Turn turn(Leg first, Leg second) {
        return FixingsMaker.turn("H1", first, "H2", second, Headings.UNKNOWN);
    }

    /** An upright pipe and a level one meet square, whichever way the level one goes. */
    @Test
    void uprightToLevelIsSquareAnyWay() {
        Turn turn = turn(leg("up", 1, 1), leg("along", 1, 0));

        assertEquals(90, turn.straightOn().value(), 1e-6);
        assertEquals(90, turn.aside().value(), 1e-6);
        assertTrue(turn.ninetyAt().isEmpty());
    }

    /** Two level pipes: the bend is the turn. */
    @Test
    void levelToLevelBendsAsItTurns() {
        Turn turn = turn(leg("one", 1, 0), leg("two", 2, 0));

        assertEquals(0, turn.straightOn().value(), 1e-6);
        assertEquals(90, turn.aside().value(), 1e-6);
        assertEquals(90, turn.ninetyAt().orElseThrow().value(), 1e-6);
        assertEquals(45, turn.fortyFiveAt().orElseThrow().value(), 1e-6);
    }

    /** Two pipes that climb at 45°: square in plan they meet at 60°, the angle of the diagonals of a cube's faces. */
    @Test
    void diagonalsOfTheFacesOfACube() {
        Turn turn = turn(leg("one", Math.sqrt(2), 1), leg("two", Math.sqrt(2), 1));

        assertEquals(0, turn.straightOn().value(), 1e-5);
        assertEquals(60, turn.aside().value(), 1e-6);
        assertEquals(180, turn.ninetyAt().orElseThrow().value(), 1e-5);
    }

    @Test
    void theCoilTakesNoMoreRoomThanItsTube() {
        Design bothy = Example.orchardBothy();
        Fixings.CoilRoom room = FixingsMaker.of(bothy, Headings.UNKNOWN).coil();

        assertTrue(room.wideM().value() > 0.05
                && room.wideM().value() < bothy.coil().lengthM());
        assertEquals(
                bothy.coil().riseM() + tube(bothy.coil().tube()).outerM(),
                room.highM().value(),
                1e-9);
    }

    /** No clip is missing at the ends, and none is farther from the next than the table allows. */
    @ParameterizedTest
    @EnumSource(Dwelling.class)
    void everyPipeOfEveryDwellingIsHeld(Dwelling dwelling) {
        Design design = dwelling.design();
        Fixings fixings = FixingsMaker.of(design, Headings.UNKNOWN);

        assertEquals(
                design.coldLegs().size()
                        + design.hotLegs().size()
                        + design.taps().size()
                        + (design.trunk().isPresent() ? 1 : 0),
                fixings.holds().size());
        for (int i = 0; i < design.coldLegs().size(); i++) {
            Hold hold = hold(fixings, "C" + (i + 1));
            double lengthM = design.coldLegs().get(i).lengthM();
            assertTrue(
                    (hold.clips() == 1 && lengthM < 0.5)
                            || (hold.clips() - 1) * hold.apart().value() >= lengthM - 1e-9,
                    hold.leg());
        }
        assertEquals(
                fixings.holds().stream().mapToInt(Hold::clips).sum(),
                PartsList.of(design).parts().stream()
                        .filter(part -> part.what().code().equals("parts.clips.what"))
                        .mapToInt(part -> (int) part.amount().value())
                        .sum());
    }

    /** Two level runs a quarter turn apart bend by a right angle; the scalar product of two unit vectors (plane geometry). */
    @Test
    void aSurveyedBendHasItsOwnAngleAndTurnsTheWayTheCompassSays() {
        Leg first = level("first");
        Leg second = level("second");
        for (double[] turn : new double[][] {{350, 80, 90, 90}, {80, 350, 90, -90}, {10, 10, 0, 0}, {0, 45, 45, 45}}) {
            Headings taken = new Headings(Map.of("first", turn[0], "second", turn[1]));
            Turn made = FixingsMaker.turn("H1", first, "H2", second, taken);
            assertEquals(turn[2], made.bend().orElseThrow().value(), 1e-9);
            assertEquals(turn[3], made.turned().orElseThrow().value(), 1e-9);
        }
        assertTrue(FixingsMaker.turn("H1", first, "H2", second, Headings.UNKNOWN)
                .bend()
                .isEmpty());
    }

    private static Leg level(String name) {
        return new Leg(name, "EN1057 22x0.9", 1, 0, Map.of(), Optional.empty(), 20, OptionalDouble.empty());
    }

    /** A regular octagon of side a is a(1 + √2) across its flats. */
    @Test
    void aCoilOfBendsOfFortyFiveDegreesIsAsWideAsAnOctagon() {
        Design eight = Example.orchardBothy();
        for (String fitting : List.of("elbow90 0", "bend90 0", "elbow45 7")) {
            eight = Changes.apply(eight, "coil.fittings." + fitting.split(" ", -1)[0], fitting.split(" ", -1)[1]);
        }
        double pieceM = eight.coil().lengthM() / 8;
        double sideM = Math.sqrt(pieceM * pieceM - Math.pow(eight.coil().riseM() / 8, 2));

        Fixings.CoilRoom room = FixingsMaker.of(eight, Headings.UNKNOWN).coil();

        assertEquals(
                sideM * (1 + Math.sqrt(2)) + tube(eight.coil().tube()).outerM(),
                room.wideM().value(),
                1e-9);
    }

    /** Half a metre is held at both ends; what is shorter by one clip. */
    @Test
    void halfAMetreOfPipeIsTheShortestThatIsHeldTwice() {
        Design half = Changes.apply(Example.orchardBothy(), "taps[0].lengthM", "0.5");
        Design shorter = Changes.apply(half, "taps[0].lengthM", "0.49");

        assertEquals(2, hold(FixingsMaker.of(half, Headings.UNKNOWN), "T1").clips());
        assertEquals(1, hold(FixingsMaker.of(shorter, Headings.UNKNOWN), "T1").clips());
    }
}
