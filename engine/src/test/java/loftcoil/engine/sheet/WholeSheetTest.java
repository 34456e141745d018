package loftcoil.engine.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Iterator;
import java.util.List;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.DesignJson;
import loftcoil.engine.design.Example;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.fault.RefusedException;
import org.junit.jupiter.api.Test;

/** The whole sheet: every agreed name, what is left out, and what the optional fields do. */
class WholeSheetTest {

    private static final ObjectMapper MAPPER = new ObjectMapper();
    private static final JsonNode WHOLE = json(Example.orchardBothy());

    private static JsonNode json(Design design) {
        return tree(SheetJson.write(Sheet.whole(design, 40)));
    }

    private static ObjectNode tree(String text) {
        try {
            return (ObjectNode) MAPPER.readTree(text);
        } catch (com.fasterxml.jackson.core.JsonProcessingException unreadable) {
            throw new IllegalStateException(unreadable);
        }
    }

    private static Design design(java.util.function.Consumer<ObjectNode> change) {
        ObjectNode text = tree(Example.orchardBothyJson());
        change.accept(text);
        return DesignJson.read(text.toString());
    }

    @Test
    void theJsonHasTheAgreedNames() {
        for (String name : List.of(
                "/loop/flowKgPerS",
                "/loop/boilMarginK",
                "/worst/boilMarginK",
                "/worst/tankC",
                "/worst/heatFactor",
                "/flue/gasLowC",
                "/verdict/borrowed",
                "/loop/coldFire/lossW",
                "/tank/fullMassKg",
                "/tank/expansionL",
                "/taps/0/flowLPerMin",
                "/taps/0/headKPa",
                "/taps/2/fillMin60L",
                "/window/uValueWPerM2K",
                "/window/transmittanceNormal",
                "/year/solarKWh",
                "/year/coilKWh",
                "/year/usedKWh",
                "/year/lossKWh",
                "/year/storedKWh",
                "/year/shortfallKWh",
                "/year/woodKg",
                "/year/hottestC",
                "/year/months/11/boilingH",
                "/year/months/11/boilingMin")) {
            assertTrue(WHOLE.at(name).isNumber(), name);
        }
        assertEquals("kitchen sink", WHOLE.at("/taps/0/name").textValue());
        assertEquals(12, WHOLE.at("/year/months").size());
        assertTrue(WHOLE.at("/loop/low").isMissingNode(), "a stated heat has no spread");
        assertTrue(WHOLE.at("/cautions").isArray());
    }

    @Test
    void theYearsAccountClosesInTheJson() {
        double in = WHOLE.at("/year/solarKWh").doubleValue()
                + WHOLE.at("/year/coilKWh").doubleValue();
        double out = WHOLE.at("/year/usedKWh").doubleValue()
                + WHOLE.at("/year/lossKWh").doubleValue()
                + WHOLE.at("/year/storedKWh").doubleValue();
        assertTrue(in > 1000);
        assertEquals(in, out, 1e-6 * in);
    }

    @Test
    void everyNumberIsFinite() {
        assertTrue(numbers(WHOLE) > 150, "numbers were looked at");
    }

    private static int numbers(JsonNode node) {
        int seen = 0;
        if (node.isNumber()) {
            assertTrue(Double.isFinite(node.doubleValue()), node.toString());
            seen++;
        }
        for (Iterator<JsonNode> parts = node.elements(); parts.hasNext(); ) {
            seen += numbers(parts.next());
        }
        return seen;
    }

    @Test
    void whatTheDesignDoesNotHaveIsLeftOut() {
        JsonNode bare = json(design(text -> text.remove(List.of("fire", "window", "taps", "use"))));
        for (String name : List.of("window", "taps", "year")) {
            assertFalse(bare.has(name), name);
        }
        assertTrue(bare.at("/loop/circulates").booleanValue());
        JsonNode shade = json(design(text -> text.remove("window")));
        assertEquals(0, shade.at("/year/solarKWh").doubleValue());
        JsonNode noYear = tree(SheetJson.write(Sheet.of(Example.orchardBothy())));
        assertFalse(noYear.has("year"), "the year is marched only where it is asked for");
        assertTrue(noYear.has("taps"));
    }

    @Test
    void aTapAboveTheWaterlineRunsNothing() {
        Design high = design(text -> ((ObjectNode) text.at("/taps/0")).put("levelM", 3.2));
        JsonNode json = json(high);
        assertEquals(0, json.at("/taps/0/flowLPerMin").doubleValue());
        assertTrue(json.at("/taps/0/headKPa").doubleValue() < 0);
        assertTrue(json.at("/taps/0/fillMin60L").isMissingNode());
        assertEquals(365 * 22, json.at("/year/litres/missing").doubleValue(), 1e-6);
        assertTrue(SheetText.lines(Sheet.of(high)).stream().anyMatch(line -> line.contains("nothing runs")));
    }

    @Test
    void withoutAStatedHeatTheFiresEstimateIsCarriedThrough() {
        Design estimated = design(text -> ((ObjectNode) text.get("coil")).remove("heatKW"));
        JsonNode json = json(estimated);
        double low = json.at("/loop/low/heatKW").doubleValue();
        double mid = json.at("/loop/heatKW").doubleValue();
        double high = json.at("/loop/high/heatKW").doubleValue();
        assertTrue(0 < low && low < mid && mid < high, low + " " + mid + " " + high);
        assertTrue(json.at("/loop/low/boilMarginK").doubleValue()
                > json.at("/loop/boilMarginK").doubleValue());
        assertTrue(json.at("/loop/high/boilMarginK").doubleValue()
                < json.at("/loop/boilMarginK").doubleValue());
        double coil = json.at("/year/coilKWh").doubleValue();
        assertTrue(json.at("/year/low/coilKWh").doubleValue() < coil);
        assertTrue(json.at("/year/high/coilKWh").doubleValue() > coil);
        assertEquals(mid * 848, coil, 0.1 * coil, "848 hours of fire");
        assertTrue(SheetText.lines(Sheet.of(estimated)).stream().anyMatch(line -> line.contains("least heat")));
    }

    @Test
    void withNeitherHeatNorFireTheHeatIsAskedFor() {
        RefusedException refused = assertThrows(
                RefusedException.class,
                () -> design(text -> {
                    text.remove("fire");
                    ((ObjectNode) text.get("coil")).remove("heatKW");
                }));
        assertEquals(
                List.of("coil.heatKW"),
                refused.faults().stream().map(Fault::path).toList());
    }

    @Test
    void aShutterSparesHeatAndFillingByHandCanLeaveTapsDry() {
        Design shut = design(text -> ((ObjectNode) text.get("window"))
                .putObject("shutter")
                .put("resistanceM2KPerW", 1.1)
                .put("shutFromH", 18)
                .put("shutForH", 14));
        assertEquals(shut, DesignJson.read(DesignJson.write(shut)));
        assertTrue(json(shut).at("/year/losses/windowKWh").doubleValue()
                < 0.8 * WHOLE.at("/year/losses/windowKWh").doubleValue());
        Design byHand = design(text -> {
            ((ObjectNode) text.get("tank")).put("refillAtH", 21.5);
            ((ObjectNode) text.at("/use/2")).put("litres", 150);
        });
        assertEquals(byHand, DesignJson.read(DesignJson.write(byHand)));
        assertTrue(json(byHand).at("/year/litres/missing").doubleValue() > 0);
    }

    @Test
    void badNewFieldsAreToldTogetherWithTheirPaths() {
        RefusedException refused = assertThrows(
                RefusedException.class,
                () -> design(text -> {
                    ((ObjectNode) text.get("tank")).put("refillAtH", 25);
                    ((ObjectNode) text.get("window"))
                            .putObject("shutter")
                            .put("resistanceM2KPerW", -1)
                            .put("shutFromH", "dusk")
                            .put("shutForH", 14)
                            .put("colour", 1);
                }));
        List<String> paths = refused.faults().stream().map(Fault::path).sorted().toList();
        assertEquals(
                List.of(
                        "tank.refillAtH",
                        "window.shutter.colour",
                        "window.shutter.resistanceM2KPerW",
                        "window.shutter.shutFromH"),
                paths);
    }

    @Test
    void moreSunThanThePlaceCanHaveIsRefusedWithItsMonth() {
        Design bright = design(
                text -> ((com.fasterxml.jackson.databind.node.ArrayNode) text.at("/site/monthly/globalKWhPerM2Day"))
                        .set(0, MAPPER.getNodeFactory().numberNode(9.0)));
        RefusedException refused = assertThrows(RefusedException.class, () -> Sheet.whole(bright, 40));
        assertEquals(
                "site.monthly.globalKWhPerM2Day[0]", refused.faults().get(0).path());
    }
}
