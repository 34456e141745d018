package loftcoil.engine.supply;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Set;
import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.pipe.Tube;
import loftcoil.engine.pipe.TubeTable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class GravitySupplyLawTest {

    private static final Tube TUBE = TubeTable.find("EN1057 15x0.7").orElseThrow();
    private static final SupplyPipe SHARED =
            SupplyPipe.of(TUBE, 4, Map.of("elbow90", 2)).fromTank();
    private static final SupplyPipe OWN = SupplyPipe.of(TUBE, 2, Map.of("tee-branch", 1));

    private static GravitySupply two(double firstM, double secondM) {
        Tee tee = new Tee(List.of(
                new Branch(OWN, new Outlet("first", firstM, 5)), new Branch(OWN, new Outlet("second", secondM, 5))));
        return new GravitySupply(2.8, 45, new Branch(SHARED, tee));
    }

    @Test
    void oneBranchIsThePipeItIsMadeOf() {
        SupplyPipe whole = SupplyPipe.of(TUBE, 6, Map.of("elbow90", 2, "tee-branch", 1, "entrance", 1));
        double single = new GravitySupply(2.8, 45, new Branch(whole, new Outlet("tap", 1, 5)))
                .alone("tap")
                .flowLPerMin();
        Tee tee = new Tee(List.of(new Branch(OWN, new Outlet("tap", 1, 5))));
        double parted =
                new GravitySupply(2.8, 45, new Branch(SHARED, tee)).alone("tap").flowLPerMin();
        assertEquals(single, parted, 1e-9 * single);
    }

    @Test
    void identicalTapsShareEqually() {
        List<TapFlow> both = two(1, 1).open(Set.of("first", "second"));
        double one = both.get(0).flowLPerMin();
        assertEquals(one, both.get(1).flowLPerMin(), 1e-9 * one);
    }

    @Test
    void aSecondTapNeverSpeedsTheFirst() {
        for (double second = 0; second <= 3; second += 0.1) {
            GravitySupply supply = two(1.2, second);
            double alone = supply.alone("first").flowLPerMin();
            double together = supply.open(Set.of("first", "second")).get(0).flowLPerMin();
            assertTrue(together <= alone * (1 + 1e-9), second + " m: " + together + " against " + alone);
        }
    }

    @Test
    void aTapAboveTheWaterlineDoesNotRun() {
        TapFlow.TooHigh high = assertInstanceOf(TapFlow.TooHigh.class, two(3, 1).alone("first"));
        assertEquals(0.2, high.aboveWaterlineM(), 1e-12);
        assertEquals(0, high.flowLPerMin());
        assertTrue(high.staticKPa() < 0);
        assertInstanceOf(TapFlow.TooHigh.class, two(2.8, 1).alone("first"));
        assertInstanceOf(FillTime.Never.class, FillTime.atFullTank(high, 60));
    }

    @Test
    void aHighTapIsRobbedByALowOneOnTheSamePipe() {
        GravitySupply supply = two(2.7, -3);
        assertInstanceOf(TapFlow.Runs.class, supply.alone("first"));
        TapFlow robbed = supply.open(Set.of("first", "second")).get(0);
        assertTrue(assertInstanceOf(TapFlow.Robbed.class, robbed).lackingM() > 0);
    }

    @ParameterizedTest
    @ValueSource(doubles = {1e-9, 1e-6, 1e-3, 0.1, 1, 10, 99})
    void flowGrowsWithHeadFromTheFirstMicrometre(double headM) {
        SupplyPipe pipe = SupplyPipe.of(TUBE, 5, Map.of("elbow90", 3)).fromTank();
        Outlet tap = new Outlet("tap", 0, 5);
        double flow =
                new GravitySupply(headM, 20, new Branch(pipe, tap)).alone("tap").flowLPerMin();
        double more = new GravitySupply(headM * 1.01, 20, new Branch(pipe, tap))
                .alone("tap")
                .flowLPerMin();
        assertTrue(flow > 0 && more > flow, flow + " then " + more);
    }

    @Test
    void refusesWhatCannotBeBuilt() {
        Outlet tap = new Outlet("tap", 1, 5);
        Tee twins = new Tee(List.of(new Branch(OWN, tap), new Branch(OWN, tap)));
        assertEquals("outlets.name", pathOf(() -> new GravitySupply(2, 40, new Branch(SHARED, twins))));
        assertEquals("waterlineM", pathOf(() -> new GravitySupply(Double.NaN, 40, new Branch(OWN, tap))));
        assertEquals("outlet", pathOf(() -> two(1, 1).alone("third")));
        assertEquals("outletK", pathOf(() -> new Outlet("tap", 1, -1)));
        assertEquals("branches", pathOf(() -> new Tee(List.of())));
        assertEquals("litres", pathOf(() -> FillTime.atFullTank(two(1, 1).alone("first"), Double.NaN)));
        RefusedException pipe = assertThrows(
                RefusedException.class, () -> new SupplyPipe(TUBE, -1, 0.01, Double.NaN, Map.of("elbow", -1)));
        assertEquals(
                List.of("lengthM", "roughnessM", "otherK", "fittings.elbow", "fittings.elbow"),
                pipe.faults().stream().map(fault -> fault.path()).toList());
    }

    private static String pathOf(org.junit.jupiter.api.function.Executable deed) {
        return assertThrows(RefusedException.class, deed).faults().get(0).path();
    }
}
