package loftcoil.engine.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.List;
import loftcoil.engine.caution.Caution;
import loftcoil.engine.design.Changes;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.Example;
import loftcoil.engine.design.Leg;
import org.junit.jupiter.api.Test;

class SheetTest {

    private static final Design BOTHY = Example.orchardBothy();

    @Test
    void theJsonHasTheAgreedNames() throws Exception {
        JsonNode json = new ObjectMapper().readTree(SheetJson.write(Sheet.of(BOTHY)));
        assertTrue(json.at("/loop/circulates").isBoolean());
        for (String name : List.of(
                "/loop/tankC",
                "/loop/flowKgPerS",
                "/loop/drivePa",
                "/loop/reynolds",
                "/loop/coilInC",
                "/loop/coilOutC",
                "/loop/returnC",
                "/loop/boilMarginK",
                "/loop/coldFire/flowKgPerS",
                "/loop/coldFire/lossW",
                "/tank/fullMassKg",
                "/tank/expansionL")) {
            assertTrue(json.at(name).isNumber(), name);
        }
        assertTrue(json.at("/cautions").isArray());
    }

    @Test
    void whereNothingFlowsThereAreNoTemperaturesAndTheReasonIsTold() throws Exception {
        JsonNode json = new ObjectMapper().readTree(SheetJson.write(Sheet.of(BOTHY.withTankBaseM(-1.5))));
        assertFalse(json.at("/loop/circulates").booleanValue());
        assertEquals(0, json.at("/loop/flowKgPerS").doubleValue());
        assertTrue(json.at("/loop/coilOutC").isMissingNode());
        assertTrue(json.at("/loop/words").textValue().contains("does not circulate"));
        assertTrue(json.at("/cautions/0/code").textValue().startsWith("LC-"));
    }

    /** 120 L × 999.70 kg/m³ (IAPWS SR6-08 at 10 °C) + 24 kg; 10 to 90 °C swells by 3.56 % (965.31 kg/m³ at 90 °C). */
    @Test
    void tankMassAndSwelling() {
        TankFigures tank = Sheet.of(BOTHY).tank();
        assertEquals(24 + 0.120 * 999.702, tank.fullMassKg(), 0.001);
        assertEquals(120 * (999.702 / 965.31 - 1), tank.expansionL(), 0.01);
    }

    /** A coil bent from one length and a fire so brisk that its flue is in no doubt; the bothy has neither. */
    private static final Design BRISK = Changes.apply(
            Changes.apply(Changes.apply(BOTHY, "fire.burnKgPerH", "20"), "coil.turns", "bent from one length"),
            "coil.tube",
            "EN1057 22x1.2");

    @Test
    void aSoundDesignRaisesNoCaution() {
        assertEquals(List.of(), Sheet.of(BRISK).cautions());
    }

    @Test
    void eachDangerRaisesItsOwnCaution() {
        assertEquals(List.of("LC-TANK-LOW"), codes(BRISK.withTankBaseM(-1.5)));
        assertEquals(
                List.of("LC-BOIL"), codes(BRISK.withLoopTube("EN1057 15x1.0").withCoilHeatKW(20)));
        List<Leg> cold = BRISK.coldLegs();
        List<Leg> hot = BRISK.hotLegs();
        assertEquals(List.of("LC-VALVE"), codes(Changes.apply(BRISK, "coldLegs[0].fittings.gate", "1")));
        assertEquals(
                List.of("LC-AIR"),
                codes(BRISK.withLegs(
                        cold, List.of(hot.get(0).withRiseM(2.0), hot.get(1).withRiseM(-0.2)))));
    }

    @Test
    void nearBoilingIsACautionAlthoughItCirculates() {
        Sheet sheet = Sheet.of(BRISK, 80);
        Sheet hotter = Sheet.of(BRISK.withCoilHeatKW(3), 82);
        assertTrue(hotter.loop().circulates(), hotter.loop().words());
        assertTrue(hotter.loop().boilMarginK() < 10);
        assertEquals(
                List.of("LC-SCALD", "LC-BOIL-NEAR"),
                hotter.cautions().stream().map(Caution::code).toList());
        assertTrue(sheet.loop().circulates());
    }

    @Test
    void theTextIsForReading() {
        List<String> lines = SheetText.lines(Sheet.of(BOTHY));
        assertTrue(lines.stream().anyMatch(line -> line.contains("L/min")));
        assertTrue(lines.stream().noneMatch(line -> line.contains("NaN") || line.length() > 90));
    }

    private static List<String> codes(Design design) {
        return Sheet.of(design).cautions().stream().map(Caution::code).toList();
    }
}
