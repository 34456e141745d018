package loftcoil.engine.pipe;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.fault.RefusedException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Names that are not in the tables, tables that cannot be read and dimensions that cannot be. */
class TablesTest {

    @ParameterizedTest
    @CsvSource({
        "en1057 22 x 0.9, EN1057 22x0.9",
        "EN 1057 28x1.2, EN1057 28x1.2",
        "EN1057 22x0.8, EN1057 22x0.9",
        "B88 L 3/4\", B88 L 3/4",
        "AS1432 B DN 20, AS1432 B DN20",
        "EN1057 35x1.1, EN1057 35x1.2",
        "EN1057 17x1.0, EN1057 18x1.0",
        "EN1057 43x1.0, EN1057 42x1.0"
    })
    void mistypedTubeFindsItsNeighbour(String typed, String meant) {
        assertTrue(TubeTable.find(typed).isEmpty());
        assertEquals(meant, TubeTable.nearest(typed).get(0));
    }

    @Test
    void unknownTubeIsRefusedWithTheNearest() {
        Fault fault = assertThrows(RefusedException.class, () -> TubeTable.require("coil.tube", "EN1057 23x0.9"))
                .faults()
                .get(0);
        assertEquals("coil.tube", fault.path());
        assertEquals("\"EN1057 23x0.9\"", fault.given());
        assertTrue(fault.allowed().contains("EN1057 22x0.9"), fault.allowed());
        assertEquals(fault, TubeTable.unknown("coil.tube", "EN1057 23x0.9"));
    }

    @Test
    void unknownFittingIsRefusedWithTheNearest() {
        Fault fault = assertThrows(RefusedException.class, () -> FittingTable.k("elbow-90", 1000, 0.02))
                .faults()
                .get(0);
        assertEquals("key", fault.path());
        assertEquals("elbow90", FittingTable.nearest("elbow-90").get(0));
        assertTrue(fault.allowed().contains("elbow90"));
        assertEquals("tee-run", FittingTable.nearest("tee run").get(0));
        assertEquals(fault, FittingTable.unknown("key", "elbow-90"));
    }

    @Test
    void unknownLaggingFindsItsNeighbour() {
        assertTrue(LaggingTable.find("rock wool").isEmpty());
        assertEquals("stone wool", LaggingTable.nearest("stonewool").get(0));
        assertEquals("PIR foam", LaggingTable.nearest("pir").get(0));
        assertTrue(LaggingTable.unknown("lagging.material", "straw").allowed().contains("stone wool"));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.01, 0, 0.001, 0.6, Double.NaN, Double.POSITIVE_INFINITY})
    void tubeOfNoSuchDiameter(double outerM) {
        assertEquals("outerM", fault(() -> new Tube("x", outerM, 0.001)).path());
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.001, 0, 0.011, 0.02, Double.NaN, Double.POSITIVE_INFINITY})
    void tubeOfNoSuchWall(double wallM) {
        Fault fault = fault(() -> new Tube("x", 0.022, wallM));
        assertEquals("wallM", fault.path());
        assertEquals("0.0001 to 0.0105 m", fault.allowed());
    }

    @ParameterizedTest
    @ValueSource(doubles = {-1, 0, 1e9, Double.NaN, Double.POSITIVE_INFINITY})
    void fittingAtNoSuchFlow(double reynolds) {
        assertEquals(
                "reynolds", fault(() -> FittingTable.k("gate", reynolds, 0.02)).path());
    }

    @ParameterizedTest
    @ValueSource(doubles = {-1, 0, 1, Double.NaN, Double.POSITIVE_INFINITY})
    void fittingInNoSuchBore(double boreM) {
        assertEquals("boreM", fault(() -> FittingTable.k("exit", 1000, boreM)).path());
    }

    @ParameterizedTest
    @ValueSource(doubles = {-1, Double.NaN})
    void fittingOfNoSuchConstants(double bad) {
        assertEquals(
                "laminarK1",
                fault(() -> new Fitting("x", "x", bad, 0, true, "")).path());
        assertEquals(
                "turbulentK",
                fault(() -> new Fitting("x", "x", 0, bad, true, "")).path());
    }

    @Test
    void laggingOutsideItsLine() {
        LaggingMaterial material = LaggingTable.require("material", "stone wool");
        assertEquals("meanC", fault(() -> material.conductivityWPerMK(251)).path());
        assertEquals(
                "meanC", fault(() -> material.conductivityWPerMK(Double.NaN)).path());
    }

    /** The tables of this room name their sources, and each row of a tube says whether it was checked. */
    @Test
    void tablesAreSourced() {
        for (String name : List.of("tubes.csv", "fittings.csv", "laggings.csv")) {
            ResourceTable table = ResourceTable.read(name);
            assertTrue(table.rows().size() >= 6, name);
            table.rows()
                    .forEach(row -> assertTrue(row.getOrDefault("source", "").length() > 5, row.toString()));
        }
        ResourceTable.read("tubes.csv")
                .rows()
                .forEach(row -> assertTrue(Set.of("table", "memory").contains(row.get("checked")), row.toString()));
    }

    @Test
    void damagedTablesAreRefused() {
        assertBroken("no such resource", () -> ResourceTable.read("nothing.csv"), "missing");
        assertBroken("no source", () -> ResourceTable.parse("t", "a,b\n1,2\n"), "source");
        assertBroken("no rows", () -> ResourceTable.parse("t", "# source x\na,b\n"), "no rows");
        assertBroken("short row", () -> ResourceTable.parse("t", "# source x\na,b\n1\n"), "2 columns");
    }

    @Test
    void theLastColumnMayHoldCommas() {
        ResourceTable table = ResourceTable.parse("t", "# source x\na,b\n1, two, three\n");
        assertEquals("two, three", table.rows().get(0).get("b"));
    }

    private static void assertBroken(String what, org.junit.jupiter.api.function.Executable call, String word) {
        String message = String.valueOf(
                assertThrows(IllegalStateException.class, call, what).getMessage());
        assertTrue(message.contains(word), message);
    }

    private static Fault fault(org.junit.jupiter.api.function.Executable call) {
        return assertThrows(RefusedException.class, call).faults().get(0);
    }
}
