package loftcoil.engine.fire;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.pipe.ResourceTable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is refused, the table of woods, flue and pipe beside it. */
class FireTest {

    private static final Wood HARDWOOD = WoodTable.require("wood", "hardwood");

    @ParameterizedTest
    @ValueSource(doubles = {-0.1, 60.1, Double.NaN, Double.POSITIVE_INFINITY})
    void moistureOutside(double moisturePct) {
        Fault fault = fault("moisturePct", () -> HARDWOOD.netJPerKg(moisturePct));
        assertEquals("0 to 60 %", fault.allowed());
        fault("moisturePct", () -> HARDWOOD.leastAirKgPerKg(moisturePct));
        fault("moisturePct", () -> HARDWOOD.flueGas(moisturePct, 2));
        fault("moisturePct", () -> Burn.common(HARDWOOD, moisturePct, 1));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-1, 1e6, Double.NaN, Double.NEGATIVE_INFINITY})
    void everyNumberIsChecked(double bad) {
        fault("burnKgPerH", () -> Burn.common(HARDWOOD, 18, bad));
        fault("excessAir", () -> TestFires.burn().withExcessAir(bad));
        fault("excessAir", () -> HARDWOOD.flueKgPerKg(18, bad));
        fault("unburntShare", () -> TestFires.burn().withUnburntShare(bad));
        fault("lengthM", () -> TestFires.coil(bad));
        fault("sootM", () -> TestFires.coil(1).withSootM(bad));
        fault("flowKgPerS", () -> new WaterFlow(bad, 40));
        fault("inletC", () -> new WaterFlow(0.01, bad));
        fault("tempC", () -> new RoomAir(bad == -1 ? 51 : bad, 1e5));
        fault("pressurePa", () -> new RoomAir(20, bad));
        fault("radiatedShare", () -> Firebox.common(TestFires.ROOM).withRadiatedShare(bad));
        fault("bodyShare", () -> Firebox.common(TestFires.ROOM).withBodyShare(bad));
        fault("passageM2", () -> FireboxSize.COMMON.withPassageM2(bad));
        fault("flameEmissivity", () -> FireboxSize.COMMON.withFlameEmissivity(bad));
        fault("wallM2", () -> new FireboxSize(bad, 0.02, 0.2, 0.2));
        fault("meanBeamM", () -> new FireboxSize(1, 0.02, bad, 0.2));
        fault("heightM", () -> new Chimney(bad, 0.15, 4, 0));
        fault("diameterM", () -> new Chimney(4, bad, 4, 0));
        fault("lossWPerM2K", () -> new Chimney(4, 0.15, bad, 0));
        fault("flueOuterM", () -> new BesideFlue(bad, 0.05, false));
        fault("gapM", () -> new BesideFlue(0.15, bad, false));
        fault("coilW", () -> TestFires.with(TestFires.burn(), 1).accountOf(bad, TestFires.WATER));
        fault("inletC", () -> CoilTable.of(TestFires.with(TestFires.burn(), 0)).heatW(0.01, bad));
        fault("carbon", () -> new Wood("x", bad, 0.06, 0.4, 18e6));
        fault("netJPerKgDry", () -> new Wood("x", 0.5, 0.06, 0.4, bad));
    }

    @Test
    void sharesOfWoodAreOfOneMass() {
        fault("carbon + hydrogen + oxygen", () -> new Wood("x", 0.6, 0.06, 0.5, 18e6));
    }

    @Test
    void aFireThatCannotBurn() {
        Burn drowned = new Burn(HARDWOOD, 60, 1, 6, 0.3);
        Fault fault = fault("burn", () -> TestFires.with(drowned, 1));
        assertTrue(fault.given().contains("°C in the flame"), fault.given());
    }

    @Test
    void unknownWoodNamesTheNearest() {
        Fault fault = fault("fire.wood", () -> WoodTable.require("fire.wood", "hardwod"));
        assertTrue(fault.allowed().contains("hardwood"), fault.allowed());
        assertTrue(WoodTable.find("coal").isEmpty());
        assertEquals(List.of("hardwood", "softwood"), WoodTable.known().names().subList(0, 2));
    }

    @Test
    void woodsAreSourced() {
        ResourceTable table = ResourceTable.read(WoodTable.class, "woods.csv");
        assertEquals(table.rows().size(), WoodTable.known().names().size());
        assertTrue(table.rows().size() >= 5);
        table.rows().forEach(row -> assertTrue(row.getOrDefault("source", "").length() > 20, row.toString()));
    }

    /** A flue that loses nothing keeps its gas; one that loses everything ends at the air outside. */
    @Test
    void flueBetweenItsLimits() {
        Burn burn = TestFires.burn();
        assertEquals(250, new Chimney(5, 0.15, 0, 5).top(burn, 250, 1e5).tempC(), 1e-9);
        assertEquals(5, new Chimney(30, 0.6, 30, 5).top(burn, 250, 1e5).tempC(), 1e-3);
        assertEquals(0, new Chimney(0, 0.15, 4, 5).top(burn, 250, 1e5).draughtPa(), 1e-12);
        FlueTop single = new Chimney(4, 0.13, 4, 0).top(burn, 230, 94_000);
        FlueTop lagged = new Chimney(4, 0.13, 1.3, 0).top(burn, 230, 94_000);
        assertTrue(lagged.tempC() > single.tempC() && lagged.draughtPa() > single.draughtPa());
        fault("flueC", () -> new Chimney(4, 0.13, 4, 0).top(burn, Double.NaN, 94_000));
    }

    @Test
    void besideTheFlue() {
        BesideFlue close = new BesideFlue(0.13, 0.03, false);
        BesideFlue far = new BesideFlue(0.13, 3, false);
        assertTrue(close.aroundC(250, 19) > new BesideFlue(0.13, 0.03, true).aroundC(250, 19));
        assertTrue(close.aroundC(250, 19) > close.aroundC(150, 19));
        assertEquals(19, far.aroundC(250, 19), 1);
        assertEquals(19, close.aroundC(19, 19), 1e-9);
        assertEquals(0.5, new BesideFlue(0.6, 0.005, false).viewShare(), 0.07);
        fault("gasC", () -> close.aroundC(Double.NaN, 19));
    }

    private static Fault fault(String path, Executable call) {
        Fault fault = assertThrows(RefusedException.class, call, path).faults().get(0);
        assertEquals(path, fault.path());
        return fault;
    }

    /** What lesson 8 says of a coat or a board: view radius / (radius + gap), glow and air halved as for the pipe; by hand. */
    @Test
    void aBoardFeelsMoreThanAPipe() {
        double steelK = 273.15 + BesideFlue.surfaceC(500, 19);
        double[] gapsMm = {10, 50, 150};
        double[] saysC = {110, 90, 70};
        for (int i = 0; i < gapsMm.length; i++) {
            double view = 75 / (75 + gapsMm[i]);
            double glowK = Math.pow(view * Math.pow(steelK, 4) + (1 - view) * Math.pow(292.15, 4), 0.25);
            double feelsC = (glowK - 273.15 + 19) / 2;
            assertEquals(saysC[i], feelsC, 3, "gap " + gapsMm[i]);
            assertTrue(feelsC > new BesideFlue(0.15, gapsMm[i] / 1000, false).aroundC(500, 19));
        }
    }
}
