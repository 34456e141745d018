package loftcoil.runner.exercise;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.Example;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.fault.RefusedException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MendReaderTest {

    static final String LOW_TANK =
            """
            {
              "kind": "mend",
              "text": "The coil knocks and the tank stays cold.",
              "faulty": {"patch": {"name": "Low tank", "window": null}, "changes": {"tank.baseM": "-0.6"}},
              "levers": [
                {"change": "tank.baseM", "from": -1, "to": 3, "by": 0.1},
                {"change": "loop.laggingMm", "from": 0, "to": 60, "by": 1},
                {"change": "vent.valve"},
                {"change": "loop.tube", "options": ["EN1057 22x0.9", "EN1057 28x0.9"]}
              ],
              "readings": [{"label": "flow", "java": "Sheet.of(design, 40).loop().flowLPerMin()", "unit": "L/min", "decimals": 2}],
              "wanted": [{"java": "Sheet.of(design, 40).loop().circulates()", "say": "The loop circulates."}],
              "mistakes": [{"changes": {"loop.laggingMm": "60"}, "because": "lagged it", "hint": "Heat does not push down."}],
              "solution": {"text": "Raise it.", "changes": {"tank.baseM": "2.2"}},
              "source": "common practice, no source"
            }
            """;

    static Mend lowTank() {
        return (Mend) read(LOW_TANK);
    }

    private static Exercise read(String json) {
        return ExerciseReader.read("16-faults/low", "exercises/16-faults/low.json", json);
    }

    @Test
    void aFaultySystemIsReadWhole() {
        Mend mend = assertInstanceOf(Mend.class, read(LOW_TANK));
        assertEquals("mend", mend.form());
        assertEquals(4, mend.levers().size());
        assertEquals(
                Optional.of(new About.Span(-1, 3, 0.1)), mend.levers().get(0).span());
        assertEquals("-1 to 3 m", mend.levers().get(0).allowed());
        assertEquals(List.of("none", "a valve"), mend.levers().get(2).options());
        assertEquals(2, mend.levers().get(3).options().size());
        assertEquals("L/min", mend.readings().get(0).unit());
        assertEquals("The loop circulates.", mend.wanted().get(0).say());
        assertEquals(Map.of("loop.laggingMm", "60"), mend.mistakes().get(0).changes());
        assertEquals(Map.of("tank.baseM", "2.2"), mend.mended());
        assertEquals("Raise it.", mend.about().solution().text());
    }

    @Test
    void theSystemIsTheSoundExampleWithItsPatchAndChanges() {
        Design found = lowTank().faulty().design();
        assertEquals("Low tank", found.name());
        assertTrue(found.window().isEmpty());
        assertEquals(Example.orchardBothy().withTankBaseM(-0.6).hotLegs(), found.hotLegs());
        assertEquals(FaultySystem.sound().taps(), found.taps());
    }

    /** RFC 7396: objects are merged, null takes away, anything else replaces, lists too. */
    @Test
    void aPatchReplacesListsAndMergesObjects() {
        Design found = new FaultySystem(
                        "{\"tank\": {\"volumeL\": 200, \"lagging\": null}, \"use\": [], \"fire\": {\"burnKgPerH\": 2}}",
                        Map.of())
                .design();
        assertEquals(200, found.tank().volumeL());
        assertEquals(0.70, found.tank().heightM());
        assertTrue(found.tank().lagging().isEmpty());
        assertTrue(found.use().isEmpty());
        assertEquals(2, found.fire().orElseThrow().burnKgPerH());
        assertEquals("hardwood", found.fire().orElseThrow().wood());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "tank.baseM\": \"-0.6\"|tank.base\": \"-0.6\"|faulty",
                "\"changes\": {\"tank.baseM\": \"-0.6\"}|\"changes\": {\"tank.waterlineM\": \"0.1\"}|faulty",
                "{\"change\": \"vent.valve\"}|{\"change\": \"vent.lid\"}|levers[2].change",
                "{\"change\": \"vent.valve\"}|{\"change\": \"loop.laggingMm\", \"from\": 0, \"to\": 20, \"by\": 1}|levers",
                "\"from\": -1, \"to\": 3, \"by\": 0.1|\"from\": 0, \"to\": 3, \"by\": 0.1|levers[0]",
                "\"from\": -1, \"to\": 3, \"by\": 0.1|\"from\": -1, \"to\": 3, \"by\": 0.3|levers[0]",
                "\"from\": -1, \"to\": 3, \"by\": 0.1|\"from\": -1, \"to\": 3|levers[0].by",
                "\"from\": -1, \"to\": 3, \"by\": 0.1|\"from\": 4, \"to\": 3, \"by\": 0.1|levers[0].from",
                "[\"EN1057 22x0.9\", \"EN1057 28x0.9\"]|[\"EN1057 22x0.9\", \"a hose\"]|levers[3].options",
                "[\"EN1057 22x0.9\", \"EN1057 28x0.9\"]|[\"EN1057 28x0.9\"]|levers[3]",
                "{\"loop.laggingMm\": \"60\"}|{\"loop.valves\": \"1\"}|mistakes[0].changes",
                "{\"loop.laggingMm\": \"60\"}|{\"loop.laggingMm\": \"40\"}|mistakes[0].changes",
                "{\"tank.baseM\": \"2.2\"}|{\"tank.heightM\": \"2.2\"}|solution.changes",
                "{\"tank.baseM\": \"2.2\"}|{}|solution.changes",
                "{\"tank.baseM\": \"2.2\"}|{\"tank.baseM\": \"-0.6\"}|solution.changes",
                "\"decimals\": 2|\"decimals\": 2.5|readings[0].decimals",
                "\"unit\": \"L/min\"|\"unit\": \"buckets\"|readings[0].unit",
                "\"say\": \"The loop circulates.\"|\"said\": \"\"|wanted[0].say",
                "\"kind\": \"mend\"|\"kind\": \"mend\", \"vary\": {}|vary",
                "\"source\": \"common practice, no source\"|\"source\": \"\"|source",
            })
    void eachFaultIsToldAtItsField(String what, String with, String field) {
        String broken = LOW_TANK.replace(what, with);
        assertTrue(!broken.equals(LOW_TANK), what);
        List<String> fields = assertThrows(RefusedException.class, () -> read(broken)).faults().stream()
                .map(fault -> fault.path().replaceFirst("^.*: ", ""))
                .toList();
        assertTrue(fields.contains(field), fields.toString());
    }

    @Test
    void aSystemOfWhichEveryLeverIsACureIsRefused() {
        String all =
                """
                {"kind": "mend", "text": "t", "source": "s",
                 "faulty": {"changes": {"tank.baseM": "-0.6", "loop.valveOpening": "half shut"}},
                 "levers": [{"change": "tank.baseM", "from": -1, "to": 3, "by": 0.1}, {"change": "loop.valveOpening"}],
                 "wanted": [{"java": "true", "say": "s"}],
                 "solution": {"text": "t", "changes": {"tank.baseM": "2.2", "loop.valveOpening": "no valve"}}}
                """;
        List<Fault> faults =
                assertThrows(RefusedException.class, () -> read(all)).faults();
        assertTrue(faults.get(0).path().endsWith(": levers"), faults::toString);
        assertEquals("every lever is a cure", faults.get(0).given());
    }

    /** As it is found a lever may stand at either of its ends. */
    @ParameterizedTest
    @CsvSource({"-0.6, 3", "-1, -0.6"})
    void aLeverMayBeFoundAtAnEnd(double from, double to) {
        String json = LOW_TANK.replace("\"from\": -1, \"to\": 3", "\"from\": " + from + ", \"to\": " + to)
                .replace("{\"tank.baseM\": \"2.2\"}", "{\"vent.valve\": \"a valve\"}");
        assertEquals(
                Optional.of(new About.Span(from, to, 0.1)),
                ((Mend) read(json)).levers().get(0).span());
    }

    private static final String TOLD =
            "{\"label\": \"%s\", \"java\": \"1.0\", \"unit\": \"°C\", \"decimals\": 1, \"tells\": %b}";
    private static final String CAUSE = "{\"text\": \"%s\", \"right\": %b, \"say\": \"said\"}";

    private static List<String> faultsOf(List<String> readings, List<String> causes) {
        String json = LOW_TANK.replaceFirst(
                "\"readings\": .*",
                "\"readings\": [" + String.join(", ", readings) + "], \"causes\": [" + String.join(", ", causes)
                        + "],");
        try {
            read(json);
            return List.of();
        } catch (RefusedException refused) {
            return refused.faults().stream()
                    .map(fault -> fault.path().replaceFirst("^.*: ", "") + ": " + fault.given())
                    .toList();
        }
    }

    /** Two readings that tell among more, one right cause among three or more. */
    @Test
    void aDiagnosisHasReadingsToTakeInVainAndCausesToWeigh() {
        String one = TOLD.formatted("one", true);
        String two = TOLD.formatted("two", true);
        String vain = TOLD.formatted("vain", false);
        List<String> causes =
                List.of(CAUSE.formatted("a", true), CAUSE.formatted("b", false), CAUSE.formatted("c", false));
        assertEquals(List.of(), faultsOf(List.of(one, two, vain), causes));
        assertEquals(List.of("readings: 2 readings, 2 of them tell"), faultsOf(List.of(one, two), causes));
        assertEquals(List.of("readings: 2 readings, 1 of them tell"), faultsOf(List.of(one, vain), causes));
        assertEquals(
                List.of("causes: 2 causes, 1 of them right"), faultsOf(List.of(one, two, vain), causes.subList(0, 2)));
        assertEquals(
                List.of("causes: 3 causes, 2 of them right"),
                faultsOf(List.of(one, two, vain), List.of(causes.get(0), CAUSE.formatted("b", true), causes.get(2))));
    }
}
