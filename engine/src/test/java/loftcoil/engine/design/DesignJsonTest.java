package loftcoil.engine.design;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.List;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.fault.RefusedException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DesignJsonTest {

    private static final String BOTHY = Example.orchardBothyJson();
    private static final ObjectMapper MAPPER = new ObjectMapper();

    @Test
    void writingWhatWasReadGivesTheSameNumbersAndNames() throws Exception {
        JsonNode before = MAPPER.readTree(BOTHY);
        JsonNode after = MAPPER.readTree(DesignJson.write(DesignJson.read(BOTHY)));
        assertTrue(before.equals(DesignJsonTest::compare, after), after.toPrettyString());
    }

    @Test
    void readingWhatWasWrittenGivesTheSameDesign() {
        Design design = Example.orchardBothy().withTankBaseM(1.234567891234).withCoilHeatKW(0.1);
        assertEquals(design, DesignJson.read(DesignJson.write(design)));
    }

    @Test
    void notesMayStandInAnyObjectAndAreKept() {
        String noted = BOTHY.replace("\"volumeL\": 120", "\"notes\": \"from the scrap yard\", \"volumeL\": 120")
                .replace("\"name\": \"beside the flue\"", "\"notes\": \"hot!\", \"name\": \"beside the flue\"");
        Design design = DesignJson.read(noted);
        assertEquals("from the scrap yard", design.notes().get("tank"));
        assertEquals("hot!", design.notes().get("hotLegs[0]"));
        assertEquals(design, DesignJson.read(DesignJson.write(design)));
    }

    @Test
    void theExampleIsMarkedAsInvented() {
        assertTrue(Example.orchardBothy().notes().getOrDefault("", "").contains("invented"));
    }

    /** One change of the text, one fault, at the field changed. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "\"volumeL\": 120|\"volumeL\": \"120\"|tank.volumeL",
                "\"volumeL\": 120|\"volumeL\": 120000|tank.volumeL",
                "\"volumeL\": 120|\"volumeL\": 1e999|tank.volumeL",
                "\"volumeL\": 120,||tank.volumeL",
                "\"waterlineM\": 0.66|\"waterlineM\": 0.30|tank.waterlineM",
                "\"waterlineM\": 0.66|\"waterlineM\": 0.80|tank.waterlineM",
                "\"drawPortM\": 0.60|\"drawPortM\": 0.68|tank.drawPortM",
                "\"inletM\": 0.35|\"inletM\": 0.45|coldLegs",
                "\"riseM\": 1.45|\"riseM\": 1.44|hotLegs",
                "\"lengthM\": 1.80|\"lengthM\": 1.60|coldLegs[0].riseM",
                "\"name\": \"run to the heater\"|\"name\": \"drop in the wall\"|coldLegs[1].name",
                "\"heightM\": 0.70|\"heightM\": 0.70, \"shape\": \"box\", \"lengthM\": 8|tank.lengthM",
                "\"panes\": 3|\"panes\": 3, \"coating\": \"gold\"|window.coating",
                "\"toughened\": 2|\"toughened\": 5|window.toughened",
                "\"volumeL\": 120|\"volumeL\": 4500, \"shape\": \"lying cylinder\"|tank.heightM",
                "\"heightM\": 0.70|\"heightM\": 0.70, \"shape\": \"sphere\"|tank.shape",
                "\"heightM\": 0.70|\"heightM\": 0.70, \"coat\": \"loose\"|tank.coat",
                "\"reflectorShare\": 0.7|\"reflectorShare\": 1|window.reflectorShare",
                "\"panes\": 3|\"panes\": 2.5|window.panes",
                "\"panes\": 3|\"panes\": 9|window.panes",
                "\"tap\": \"wash tub\"|\"tap\": \"bath\"|use[2].tap",
                "\"elbow90\": 4|\"elbw90\": 4|coil.fittings.elbw90",
                "\"elbow90\": 4|\"elbow90\": -1|coil.fittings.elbow90",
                "\"elbow90\": 4|\"elbow90\": 99999999999|coil.fittings.elbow90",
                "\"material\": \"elastomeric foam\", \"thicknessMm\": 19|\"material\": \"foam\", \"thicknessMm\": 19|hotLegs[1].lagging.material",
                "12.5, \"litres\": 10|25, \"litres\": 10|use[1].atH",
                "[1, 2, 3, 4, 10|[1, 2, 2, 4, 10|fire.months[2]",
                "[1.4, 2.3, 3.5,|[2.3, 3.5,|site.monthly.globalKWhPerM2Day",
                "\"heatKW\": 2.0|\"heatKW\": 2000|coil.heatKW",
                "\"heatKW\": 2.0|\"heatKW\": 6.5|coil.heatKW",
                "\"burnKgPerH\": 1.4|\"burnKgPerH\": 0.3|coil.heatKW",
                "\"altitudeM\": 620|\"altitudeM\": 620, \"altitude\": 3|site.altitude",
                "\"wood\": \"hardwood\"|\"wood\": \"coal\"|fire.wood",
            })
    void oneFaultIsToldAtItsField(String from, String to, String path) {
        assertTrue(BOTHY.contains(from), "the example changed: " + from);
        String changed = BOTHY.replace(from, to == null ? "" : to);
        assertEquals(List.of(path), faults(changed).stream().map(Fault::path).toList());
    }

    /** 0.3 kg of wood as dry as the bothy's holds 1.27 kW h, by its net heating value; the other fault of two is told first. */
    @Test
    void aHeatAboveThatOfTheWoodNamesWhatTheWoodHolds() {
        String strong = BOTHY.replace("\"heatKW\": 2.0", "\"heatKW\": 6.5")
                .replace("\"burnKgPerH\": 1.4", "\"burnKgPerH\": 0.3");
        Fault fault = faults(strong).get(0);
        double mostKW = Math.floor(Example.orchardBothy().fire().orElseThrow().fuelKW() / 1.4 * 0.3 * 100) / 100;
        assertEquals(
                "coil.heatKW: 6.5; allowed: 0 to " + mostKW + " kW (the wood burnt in an hour holds no more)",
                fault.line());
        assertEquals(
                List.of("tank.volumeL"),
                faults(strong.replace("\"volumeL\": 120", "\"volumeL\": 120000")).stream()
                        .map(Fault::path)
                        .toList());
    }

    /** As a tube is written: outer diameter x wall in mm; it is kept as it was given and counts as copper. */
    @Test
    void aTubeMayBeGivenByItsSizeAlone() {
        Design alone = DesignJson.read(BOTHY.replaceFirst("EN1057 22x0.9", "35x1.0"));
        Design copper = DesignJson.read(BOTHY.replaceFirst("EN1057 22x0.9", "35x1.0 copper"));
        assertEquals("35x1.0", alone.coil().tube());
        assertEquals(alone, DesignJson.read(DesignJson.write(alone)));
        assertEquals(
                copper.circuit(40).search().forward().orElseThrow().flowKgPerS(),
                alone.circuit(40).search().forward().orElseThrow().flowKgPerS());
        assertEquals(
                "35x1.0",
                Changes.apply(alone, "legs.tube", "35x1.0").hotLegs().get(0).tube());
    }

    @Test
    void plasticIsNoTubeInAFire() {
        Fault fault = faults(BOTHY.replaceFirst("EN1057 22x0.9", "22x2.0 PEX")).get(0);
        assertEquals("coil.tube", fault.path());
        assertTrue(fault.line().endsWith("copper, stainless, steel (plastic melts beside a fire)"), fault.line());
    }

    @Test
    void anUnknownTubeNamesTheNearest() {
        Fault fault =
                faults(BOTHY.replaceFirst("EN1057 22x0.9", "EN1057 22x0,9")).get(0);
        assertEquals("coil.tube", fault.path());
        assertTrue(fault.allowed().contains("EN1057 22x0.9"), fault.line());
    }

    @Test
    void aMisspeltFieldNamesTheRightOne() {
        List<Fault> faults = faults(BOTHY.replace("\"waterlineM\"", "\"waterLineM\""));
        assertEquals(
                List.of("tank.waterlineM", "tank.waterLineM"),
                faults.stream().map(Fault::path).toList());
        assertTrue(faults.get(1).allowed().contains("waterlineM"), faults.get(1).line());
    }

    @Test
    void openRisesNameTheSumAndWhatItShouldBe() {
        Fault fault =
                faults(BOTHY.replace("\"riseM\": -0.20", "\"riseM\": -0.30")).get(0);
        assertEquals("coldLegs", fault.path());
        assertTrue(fault.line().contains("-2 m") && fault.line().contains("-1.9 m"), fault.line());
    }

    @Test
    void everyFaultIsToldAtOnceOnOneLineEach() {
        List<Fault> faults = faults(BOTHY.replace("620", "\"high\"")
                .replace("\"roomC\": 19", "\"roomC\": 190")
                .replace("\"coldPortM\": 0.05", "\"coldPortM\": 0.5")
                .replace("\"lengthM\": 1.6", "\"lengthM\": 0.3"));
        assertEquals(
                List.of("site.altitudeM", "site.roomC", "tank.coldPortM", "coil.lengthM", "coldLegs"),
                faults.stream().map(Fault::path).toList());
        assertTrue(faults.stream().noneMatch(fault -> fault.line().contains("\n")));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "  \n ",
                "[]",
                "3",
                "\"x\"",
                "{\"name\": }",
                "{\"name\": \"a\"",
                "{} {}",
                "nothing",
                "{\"a\":1,\"a\":2}"
            })
    void whatIsNoJsonObjectIsRefusedWithOneLine(String text) {
        List<Fault> faults = faults(text);
        assertEquals(1, faults.size());
        assertEquals("design", faults.get(0).path());
        assertTrue(!faults.get(0).line().contains("\n") && !faults.get(0).line().contains("com.fasterxml"));
    }

    @Test
    void brokenJsonTellsLineAndColumn() {
        assertTrue(faults("{\n  \"name\": }").get(0).line().contains("line 2, column 11"));
    }

    @Test
    void anEmptyObjectNamesWhatIsMissing() {
        assertEquals(
                List.of("name", "site", "tank", "coil", "coldLegs", "hotLegs"),
                faults("{}").stream().map(Fault::path).toList());
    }

    @Test
    void deepNestingIsRefusedWithoutHarm() {
        String deep = "{\"name\":" + "[".repeat(100_000) + "]".repeat(100_000) + "}";
        assertEquals("design", faults(deep).get(0).path());
    }

    @Test
    void aByteOrderMarkBeforeTheTextIsSkipped() {
        assertEquals(Example.orchardBothy(), DesignJson.read("\uFEFF" + BOTHY));
    }

    @ParameterizedTest
    @CsvSource({
        "Orchard bothy, name",
        "drop in the wall, coldLegs[0].name",
        "An invented example, notes",
        "stone wool, tank.lagging.material"
    })
    void controlCharactersInAnyTextAreRefusedAndNotRepeated(String text, String path) {
        for (String escaped : List.of("\\u001b[31m", "\\u0007", "\\u009b", "\\u202e")) {
            List<Fault> faults = faults(BOTHY.replaceFirst(text, text + escaped.replace("\\", "\\\\")));
            assertEquals(List.of(path), faults.stream().map(Fault::path).toList());
            assertTrue(faults.get(0)
                    .line()
                    .codePoints()
                    .noneMatch(sign -> Character.isISOControl(sign) || sign == 0x202E));
        }
    }

    @Test
    void notesMayHaveSeveralLines() {
        Design design =
                DesignJson.read(BOTHY.replace("An invented example", "An invented example\\n\\tfor the course"));
        assertEquals(design, DesignJson.read(DesignJson.write(design)));
    }

    @Test
    void theNameOfAnUnknownFieldIsToldWithoutItsControlCharacters() {
        Fault fault = faults(BOTHY.replace("\"altitudeM\"", "\"alt\\u001b[2Jitude\": 3, \"altitudeM\""))
                .get(0);
        assertTrue(fault.line().codePoints().noneMatch(Character::isISOControl), fault.line());
    }

    /** What is wrong is said for somebody who wrote a design, not for somebody who wrote a program. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "{\"name\": NaN}|digits",
                "{\"name\": 1.2.3}|comma",
                "{\"name\": 'a'}|double quotation marks",
                "{name: 1}|double quotation marks",
                "{\"name\" 1}|colon",
                "{\"name\": 1 \"b\": 2}|comma",
                "{\"name\": 1,}|double quotation marks",
                "{\"name\": \"a|closed",
                "{\"name\": \"\\x\"}|backslash",
                "{\"name\": 01}|no zero",
                "{\"name\": tru}|value is wanted",
                "{\"a\":1,\"a\":2}|twice"
            })
    void brokenJsonIsExplainedPlainlyWithItsPlace(String json, String word) {
        String line = faults(json).get(0).line();
        assertTrue(line.contains(word) && line.contains("line 1, column "), line);
        for (String foreign : List.of("Json", "Feature", "token", "CTRL-CHAR", "ASCII", "Stream", "Unexpected")) {
            assertTrue(!line.contains(foreign), line);
        }
    }

    @Test
    void tooMuchOfAnythingIsExplainedPlainly() {
        List<String> tooMuch = List.of(
                "{\"a\":" + "[".repeat(30) + "]".repeat(30) + "}",
                "{\"a\":" + "1".repeat(200) + "}",
                "{\"a\":\"" + "x".repeat(30_000) + "\"}",
                "{\"" + "x".repeat(300) + "\":1}");
        for (String json : tooMuch) {
            String line = faults(json).get(0).line();
            assertTrue(line.contains(" more than "), line);
            assertTrue(!line.contains("Stream") && !line.contains("(`"), line);
        }
    }

    private static List<Fault> faults(String json) {
        return assertThrows(RefusedException.class, () -> DesignJson.read(json)).faults();
    }

    /** 1.40 and 1.4, 4 and 4.0 are the same number. */
    private static int compare(JsonNode one, JsonNode other) {
        if (one.isNumber() && other.isNumber()) {
            return Double.compare(one.doubleValue(), other.doubleValue());
        }
        return one.equals(other) ? 0 : 1;
    }

    @Test
    void wheelsWithoutATankSayOnlyThatTheTankIsMissing() {
        String json = "{\"safety\": {\"structure\": {\"wheels\": {\"floorAboveRoadM\": 0.9}}}}";
        RefusedException refused = assertThrows(RefusedException.class, () -> DesignJson.read(json));
        assertTrue(refused.lines().stream().anyMatch(line -> line.startsWith("tank: missing")), refused.getMessage());
        assertTrue(!refused.getMessage().contains("NaN"), refused.getMessage());
    }
}
