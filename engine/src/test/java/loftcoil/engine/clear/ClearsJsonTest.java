package loftcoil.engine.clear;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import loftcoil.engine.caution.CautionKind;
import loftcoil.engine.design.Changes;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.DesignFields;
import loftcoil.engine.design.DesignJson;
import loftcoil.engine.design.Example;
import loftcoil.engine.sheet.Sheet;
import loftcoil.engine.study.NamedValue;
import loftcoil.engine.words.MeasuredText;
import org.junit.jupiter.api.Test;

class ClearsJsonTest {

    private static final ObjectMapper MAPPER = new ObjectMapper();
    private static final Design BOTHY = Example.orchardBothy();

    /** Ways as the search would hand them in; what they do is judged in the tests of the search. */
    private static Way way(String... changes) {
        List<NamedValue> values = List.of(changes).stream()
                .map(text -> text.split("=", 2))
                .map(pair -> new NamedValue(pair[0], pair[1]))
                .toList();
        return new Way(values, MeasuredText.of("words"), 1);
    }

    private static JsonNode written(Cleared... dangers) throws JsonProcessingException {
        return MAPPER.readTree(ClearsJson.write(Sheet.of(BOTHY), new Clears(BOTHY, List.of(dangers), true, 0)));
    }

    private static JsonNode of(JsonNode sheet, CautionKind kind) {
        for (JsonNode caution : sheet.path("cautions")) {
            if (caution.path("code").asText().equals(kind.code())) {
                return caution;
            }
        }
        throw new AssertionError(kind.code() + " is not among " + sheet.path("cautions"));
    }

    @Test
    void everyCautionHasTheKeyAndOneOfWhichNothingWasFoundHasItEmpty() throws JsonProcessingException {
        JsonNode sheet = written();
        assertTrue(sheet.path("cautions").size() >= 3);
        for (JsonNode caution : sheet.path("cautions")) {
            assertEquals(MAPPER.createArrayNode(), caution.path("clears"));
            assertEquals(MAPPER.createArrayNode(), caution.path("clearsTogether"));
            assertEquals(MAPPER.createArrayNode(), caution.path("rarer"));
        }
    }

    @Test
    void aSingleChangeStandsApartFromSeveralTogether() throws JsonProcessingException {
        Way one = way("tank.volumeL=200");
        Way both = way("tank.volumeL=200", "window.areaM2=0.5");
        JsonNode joint = of(
                written(new Cleared(CautionKind.COIL_JOINT, List.of(one, both), List.of(way("fire.litForH=2")), Optional.empty())),
                CautionKind.COIL_JOINT);
        assertEquals(1, joint.path("clears").size());
        assertEquals("tank.volumeL", joint.at("/clears/0/change").asText());
        assertEquals(200, joint.at("/clears/0/to").asDouble());
        assertEquals("words", joint.at("/clears/0/words").asText());
        assertEquals(
                "window.areaM2", joint.at("/clearsTogether/0/changes/1/change").asText());
        assertEquals("fire.litForH", joint.at("/rarer/0/change").asText());
    }

    @Test
    void aNamedChangeThatComesDownToOneFieldIsToldAsThatField() throws JsonProcessingException {
        JsonNode joint = of(
                written(new Cleared(CautionKind.COIL_JOINT, List.of(way("tank.laggingMm=40")), List.of(), Optional.empty())),
                CautionKind.COIL_JOINT);
        assertEquals("tank.lagging.thicknessMm", joint.at("/clears/0/change").asText());
        assertEquals(40, joint.at("/clears/0/to").asDouble());
    }

    /** A program that knows paths and nothing of named changes comes to the same design. */
    @Test
    void whoeverSetsTheFieldsHasTheDesignThatWasJudged() throws JsonProcessingException {
        List<Way> ways = List.of(
                way("tank.baseM=2.7"),
                way("coil.turns=bent from one length"),
                way("taps.mixer=set to 45 °C"),
                way("loop.tube=EN1057 28x1.2"));
        JsonNode clears = of(written(new Cleared(CautionKind.COIL_JOINT, ways, List.of(), Optional.empty())), CautionKind.COIL_JOINT)
                .path("clears");
        for (int i = 0; i < ways.size(); i++) {
            ObjectNode file = (ObjectNode) MAPPER.readTree(DesignJson.write(BOTHY));
            assertFalse(clears.get(i).path("fields").isEmpty());
            for (JsonNode field : clears.get(i).path("fields")) {
                set(file, field.path("path").asText(), field.path("to"));
            }
            assertEquals(
                    List.of(), DesignFields.compare(ways.get(i).appliedTo(BOTHY), DesignJson.read(file.toString())));
        }
        assertEquals("2.7", Changes.current(ways.get(0).appliedTo(BOTHY), "tank.baseM"));
    }

    private static void set(ObjectNode file, String path, JsonNode to) {
        String[] names = path.replace("[", ".").replace("]", "").split("\\.", -1);
        JsonNode at = file;
        for (int i = 0; i < names.length - 1; i++) {
            if (at instanceof ArrayNode list) {
                at = list.get(Integer.parseInt(names[i]));
            } else {
                at = at.has(names[i]) ? at.path(names[i]) : ((ObjectNode) at).putObject(names[i]);
            }
        }
        String last = names[names.length - 1];
        if (to.isNull()) {
            ((ObjectNode) at).remove(last);
        } else {
            ((ObjectNode) at).set(last, to);
        }
    }
}
