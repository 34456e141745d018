package loftcoil.engine.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** A run of pipe closes on what was guessed, never on what was measured. */
class ClosingTest {

    private static final double TIGHT = 1e-9;

    static WalkedPipe pipe(String name, Way way, double lengthM, double slopeMmPerM, boolean measured) {
        return new WalkedPipe(
                name,
                way,
                lengthM,
                slopeMmPerM,
                OptionalDouble.empty(),
                1,
                0,
                "EN1057 22x0.9",
                Optional.empty(),
                19,
                OptionalDouble.empty(),
                false,
                measured);
    }

    private static Closing hot(double wantedM, WalkedPipe... pipes) {
        return Closing.of(Closing.Run.HOT, List.of(pipes), wantedM);
    }

    @Test
    void aRunThatFitsIsLeftAsItWasWalked() {
        WalkedPipe riser = pipe("riser", Way.UP, 1.5, 0, false);
        WalkedPipe run = pipe("run", Way.ALONG, 2, 150, true);

        Closing closing = hot(1.8, riser, run);

        assertTrue(closing.closes());
        assertEquals(List.of(riser, run), closing.pipes());
        assertTrue(closing.moved().isEmpty());
    }

    @Test
    void aSmallMissMovesTheGuessedPiecesByTheirLengthsAndNoMeasuredOne() {
        WalkedPipe measured = pipe("measured", Way.UP, 1.5, 0, true);
        WalkedPipe one = pipe("one", Way.UP, 0.3, 0, false);
        WalkedPipe three = pipe("three", Way.ALONG, 0.9, 100, false);

        Closing closing = hot(1.5 + 0.3 + 0.09 + 0.02, measured, one, three);

        assertTrue(closing.closes());
        assertEquals(measured, closing.pipes().get(0));
        assertEquals(0.305, closing.pipes().get(1).riseM(), TIGHT);
        assertEquals(0.105, closing.pipes().get(2).riseM(), TIGHT);
        assertEquals(0.9, closing.pipes().get(2).lengthM(), TIGHT);
        assertEquals(
                List.of("one", "three"),
                closing.moved().stream().map(Closing.Moved::name).toList());
        assertTrue(closing.words().metric().contains("20 mm"), closing.words().metric());
    }

    @Test
    void aSmallMissOfMeasuredPiecesAloneStaysOpen() {
        Closing closing = hot(1.52, pipe("riser", Way.UP, 1.5, 0, true));

        assertFalse(closing.closes());
        assertEquals(0.02, closing.missM(), TIGHT);
    }

    @Test
    void whatATapeMayMissGrowsWithTheLength() {
        assertEquals(0.01 + 0.005 * 4, hot(4, pipe("riser", Way.UP, 4, 0, true)).allowedM(), TIGHT);
    }

    @Test
    void aLargeMissNamesItAndWhatMayBeWrong() {
        // The hot run of a newcomer: 1.9 m up beside the flue and 0.144 m more along; the port is 2.43 m above the
        // coil.
        Closing closing =
                hot(2.43, pipe("riser", Way.UP, 1.9, 0, true), pipe("under the roof", Way.ALONG, 1.8, 80, false));

        assertFalse(closing.closes());
        assertEquals(
                "The hot pipe ends 39 cm below the return port.",
                closing.words().metric());
        assertEquals(
                List.of(
                        "A piece was forgotten that leads up, 39 cm in all.",
                        "“riser” is 2.29 m long, not 1.90 m.",
                        "“under the roof” climbs 294 mm/m; it was told that it climbs 80 mm/m.",
                        "The tank stands 39 cm lower than it was said; then the other run changes too.",
                        "None of these: measure again, coil, ports and every piece."),
                closing.mends().stream().map(mend -> mend.words().metric()).toList());
    }

    @Test
    void aMendThatNoPipeCanTakeIsNotOffered() {
        Closing closing = hot(-1, pipe("short", Way.UP, 0.3, 0, true), pipe("stub", Way.ALONG, 0.2, 0, true));

        assertEquals(
                List.of(Closing.Mend.Kind.FORGOTTEN, Closing.Mend.Kind.TANK, Closing.Mend.Kind.AGAIN),
                closing.mends().stream().map(Closing.Mend::kind).toList());
        assertTrue(closing.words().metric().contains("above the return port"));
    }

    @Test
    void aColdRunThatEndsTooLowAsksForATankThatStandsHigher() {
        Closing closing = Closing.of(Closing.Run.COLD, List.of(pipe("drop", Way.DOWN, 2, 0, true)), -1.5);

        assertEquals(
                "The cold pipe ends 50 cm below the coil's inlet.",
                closing.words().metric());
        assertTrue(closing.mends().stream()
                .anyMatch(mend -> mend.words().metric().startsWith("The tank stands 50 cm higher")));
    }

    @Test
    void aPieceDownGetsShorterWhereItsEndHasToRise() {
        Closing closing = Closing.of(Closing.Run.COLD, List.of(pipe("drop", Way.DOWN, 2, 0, false)), -1.985);

        assertEquals(1.985, closing.pipes().get(0).lengthM(), TIGHT);
        assertEquals(-1.985, closing.pipes().get(0).riseM(), TIGHT);
    }

    /** What stays of a pipe may be as short as 50 mm and no shorter. */
    @Test
    void aPipeIsShortenedToFiftyMillimetresAtMost() {
        assertTrue(kinds(hot(0.05, pipe("riser", Way.UP, 0.1, 0, true))).contains(Closing.Mend.Kind.LENGTH));
        assertFalse(kinds(hot(0.04, pipe("riser", Way.UP, 0.1, 0, true))).contains(Closing.Mend.Kind.LENGTH));
    }

    private static List<Closing.Mend.Kind> kinds(Closing closing) {
        return closing.mends().stream().map(Closing.Mend::kind).toList();
    }

    /** Beside, beyond, or both: each part of a miss in plan is told where it is a centimetre or more. */
    @Test
    void aMissInPlanIsToldByThePartsThatCount() {
        assertEquals(
                List.of("plan.near plan.beyond", "plan.near plan.right", "plan.near plan.both plan.left plan.short"),
                Stream.of(miss(0.3, 0.001), miss(0.001, -0.3), miss(-0.01, 0.3))
                        .map(closing -> closing.words().code())
                        .toList());
    }

    private static PlanClosing miss(double beyondM, double leftM) {
        return new PlanClosing(Math.hypot(beyondM, leftM), beyondM, leftM, 0.02, 1);
    }

    @Test
    void aSlopeThatFallsIsToldAsAFall() {
        Closing high = Closing.of(Closing.Run.HOT, List.of(pipe("along", Way.ALONG, 2, 50, true)), -0.2);

        assertTrue(
                high.mends().stream().anyMatch(mend -> mend.words()
                        .metric()
                        .equals("“along” falls 100 mm/m; it was told that it climbs 50 mm/m.")),
                high.mends().toString());
        Closing moved = Closing.of(Closing.Run.COLD, List.of(pipe("drop", Way.DOWN, 2, 0, false)), -2.01);
        assertEquals(
                "“drop” ends 10 mm lower than it was told: it falls 2010 mm, not 2000 mm.",
                moved.moved().get(0).words().metric());
    }

    @Test
    void aMissOfMillimetresIsToldToAMillimetreAndNoSlopeAsLevel() {
        Closing low = hot(1.505, pipe("riser", Way.UP, 1.5, 0, true));
        assertTrue(
                low.mends().stream()
                        .anyMatch(mend -> mend.words().metric().equals("“riser” is 1.505 m long, not 1.500 m.")),
                low.mends().toString());
        Closing level = hot(0, pipe("over", Way.ALONG, 2, 50, true));
        assertTrue(
                level.mends().stream()
                        .anyMatch(mend ->
                                mend.words().metric().equals("“over” lies level; it was told that it climbs 50 mm/m.")),
                level.mends().toString());
    }
}
