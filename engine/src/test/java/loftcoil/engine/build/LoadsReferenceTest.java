package loftcoil.engine.build;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.Example;
import loftcoil.engine.design.SafeBothy;
import org.junit.jupiter.api.Test;

/** Weights against the published density of water and published masses of tube. */
class LoadsReferenceTest {

    private static final Design BOTHY = Example.orchardBothy();

    /** IAPWS SR6-08(2011): 999.70 kg/m³ at 10 °C and 0.1 MPa. */
    private static final double WATER_KG_PER_L = 0.99970;

    private static double value(Loads loads, String what) {
        return loads.loads().stream()
                .filter(load -> load.what().metric().equals(what))
                .findFirst()
                .orElseThrow()
                .value()
                .value();
    }

    @Test
    void theFullTankIsItsWaterAndItself() {
        Loads loads = LoadsMaker.of(BOTHY);
        assertEquals(24 + 120 * WATER_KG_PER_L, value(loads, "tank, full to the brim"), 0.01);
        assertEquals(24 + 120 * 0.66 / 0.70 * WATER_KG_PER_L, value(loads, "tank, full to the waterline"), 0.01);
        assertEquals(9.80665 * (24 + 120 * WATER_KG_PER_L), value(loads, "its weight as a force"), 0.1);
    }

    /** Round, 120 L on 0.70 m: footprint 0.12/0.7 m². */
    @Test
    void theFloorBearsTheWeightOverTheFootprint() {
        double kiloNewtons = 9.80665 * (24 + 120 * WATER_KG_PER_L) / 1000;
        assertEquals(kiloNewtons / (0.12 / 0.7), value(LoadsMaker.of(BOTHY), "on the floor under it"), 0.001);
    }

    /**
     * A stone byre's lying tank: 180 litres, 0.5 m across, filled to 0.46 m, with 35 kg empty. On each of two saddles half its
     * weight; to the waterline 173.3 L by the segment of a circle (Perry's table, h/D 0.92: 0.7560 D², recomputed from the closed form).
     */
    @Test
    void aLyingTankStandsOnTwoSaddles() {
        Design lying = SafeBothy.edited(List.of(
                "/tank/shape",
                "\"lying cylinder\"",
                "/tank/volumeL",
                "180",
                "/tank/heightM",
                "0.5",
                "/tank/waterlineM",
                "0.46",
                "/tank/drawPortM",
                "0.42",
                "/tank/emptyMassKg",
                "35"));
        Loads loads = LoadsMaker.of(lying);
        double fullKg = 35 + 180 * WATER_KG_PER_L;
        assertEquals(9.80665 * fullKg / 2, value(loads, "on each of two saddles under the lying tank"), 0.1);
        double litres = 0.75597 * 0.25 * 1000 * (0.18 / (Math.PI / 4 * 0.25));
        assertEquals(35 + litres * WATER_KG_PER_L, value(loads, "tank, full to the waterline"), 0.1);
        assertTrue(loads.loads().stream().noneMatch(load -> load.what().metric().contains("falls over")));
        assertTrue(loads.notes().stream().anyMatch(note -> note.metric().contains("rolls")));
    }

    /**
     * On four legs of half a metre, as far apart as the tank is wide (0.467 m), its middle stands 0.85 m up: it falls at
     * atan(0.2336 / 0.85) = 15.4° where it stands on its base until 33.7°. Two legs crosswise may carry all: half of its weight each (plane
     * statics).
     */
    @Test
    void legsLetTheTankFallSooner() {
        Loads loads = LoadsMaker.of(BOTHY);
        assertEquals(33.7, value(loads, "lean at which the tank alone falls over"), 0.05);
        String legs = loads.notes().stream()
                .map(note -> note.metric())
                .filter(note -> note.contains("four legs"))
                .findFirst()
                .orElseThrow();
        assertTrue(legs.contains("15°"), legs);
        long halfN = Math.round(9.80665 * (24 + 120 * WATER_KG_PER_L) / 2);
        assertTrue(legs.contains(halfN + " N"), legs);
    }

    /** Mass and filling of 22 × 1.0 tube as a tube maker prints them for EN 1057: 0.587 kg/m and 0.314 L/m. */
    @Test
    void aMetreOfPipeIsItsCopperAndItsWater() {
        Loads loads = LoadsMaker.of(BOTHY.withLoopTube("EN1057 22x1.0"));
        double perM = 0.587 + 0.314 * WATER_KG_PER_L;
        assertEquals(1.6 * perM, value(loads, "coil, with water"), 1.6 * 0.001);
        assertEquals((1.8 + 1.2 + 1.6 + 1.5 + 1.4) * perM, value(loads, "whole loop, with water"), 7.5 * 0.001);
    }

    @Test
    void bearersShareTheWeight() {
        Loads loads = LoadsMaker.of(SafeBothy.design());
        assertEquals(value(loads, "its weight as a force") / 3, value(loads, "on each of 3 bearers"), 1e-9);
    }

    /** 3 panes of 0.8 m², 4 mm, 2500 kg/m³ (EN 572-1): 10 kg for each m² of pane. */
    @Test
    void panesWeighTenKilogramsASquareMetre() {
        assertEquals(3 * 0.8 * 10, value(LoadsMaker.of(BOTHY), "panes"), 1e-9);
    }
}
