package loftcoil.engine.design;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;

/** The invented bothy with everything said that there is to say on safety, and nothing dangerous in it. */
public final class SafeBothy {

    private static final ObjectMapper MAPPER = new ObjectMapper();

    private static final String SAFETY =
            """
            {"vent": {"kind": "open pipe", "tube": "EN1057 22x0.9", "aboveWaterlineM": 0.4, "valve": false},
             "coldFeed": {"kind": "feed cistern", "drinkingWater": true, "boreMm": 13, "airGapMm": 40, "valve": false,
                "overflowBoreMm": 26, "plasticCistern": false},
             "materials": {"tank": "stainless steel", "inLoop": ["brass"], "plasticPipes": []},
             "structure": {"loadLimitKg": 400, "bearers": 3, "wheels":
               {"massKg": 2500, "centreHeightM": 1.1, "centreAheadM": 0.2, "hitchAheadM": 4, "trackM": 2.0,
                "axleLimitKg": 3500, "floorAboveRoadM": 0.6, "tankAheadM": 0.3, "tankAsideM": 0.2}},
             "absence": {"months": [11], "drained": true},
             "antifreeze": false,
             "flue": {"flueToCombustibleMm": 500, "heaterToCombustibleMm": 1000, "topAboveRoofM": 1.2,
                "heightM": 4.5, "diameterMm": 150, "insulated": true},
             "fireRoom": {"carbonMonoxideAlarm": true, "airOpeningCm2": 100, "extractFan": false},
             "childrenOrFrail": false, "signedNotForDrinking": true}
            """;

    private SafeBothy() {}

    /** As JSON text. */
    public static String json() {
        return tree().toString();
    }

    /** The design. */
    public static Design design() {
        return DesignJson.read(json());
    }

    /**
     * The design with one field changed.
     *
     * @param pointer JSON pointer of the field, such as {@code /safety/vent/valve}
     * @param valueJson its new value as JSON; {@code null} takes it out
     */
    public static Design with(String pointer, String valueJson) {
        return DesignJson.read(jsonWith(pointer, valueJson));
    }

    /** The JSON of {@link #with}, which need not be a good design. */
    public static String jsonWith(String pointer, String valueJson) {
        return jsonEdited(List.of(pointer, valueJson));
    }

    /**
     * The design with several fields changed.
     *
     * @param edits pointer, value, pointer, value …
     */
    public static Design edited(List<String> edits) {
        return DesignJson.read(jsonEdited(edits));
    }

    /** A design with the fields at its top put in the place of those of the same names. */
    public static Design merged(String designJson, String fieldsJson) {
        try {
            ObjectNode root = (ObjectNode) MAPPER.readTree(designJson);
            return DesignJson.read(
                    root.setAll((ObjectNode) MAPPER.readTree(fieldsJson)).toString());
        } catch (JsonProcessingException unreadable) {
            throw new IllegalArgumentException(fieldsJson, unreadable);
        }
    }

    /** The design standing on the ground. */
    public static Design unwheeled() {
        return with("/safety/structure/wheels", "null");
    }

    private static String jsonEdited(List<String> edits) {
        ObjectNode root = tree();
        for (int i = 0; i < edits.size(); i += 2) {
            edit(root, edits.get(i), edits.get(i + 1));
        }
        return root.toString();
    }

    private static void edit(ObjectNode root, String pointer, String valueJson) {
        int cut = pointer.lastIndexOf('/');
        JsonNode owner = root.at(pointer.substring(0, cut));
        if (!(owner instanceof ObjectNode object)) {
            throw new IllegalArgumentException(pointer + " has no object around it");
        }
        try {
            object.set(pointer.substring(cut + 1), MAPPER.readTree(valueJson));
        } catch (JsonProcessingException unreadable) {
            throw new IllegalArgumentException(valueJson, unreadable);
        }
    }

    private static ObjectNode tree() {
        try {
            ObjectNode root = (ObjectNode) MAPPER.readTree(Example.orchardBothyJson());
            root.set("safety", MAPPER.readTree(SAFETY));
            ((ObjectNode) root.at("/fire")).set("months", MAPPER.readTree("[1, 2, 3, 4, 10, 12]"));
            // A brisk fire, so that the flue stays warm at the low end of what is not known of it.
            ((ObjectNode) root.at("/fire")).put("burnKgPerH", 4.0);
            ((ObjectNode) root.at("/site")).put("hardnessMgPerL", 40);
            // One length of soft tube, bent.
            ((ObjectNode) root.at("/coil"))
                    .put("tube", "EN1057 22x1.2")
                    .set("fittings", MAPPER.readTree("{\"bend90\": 4}"));
            for (JsonNode tap : root.at("/taps")) {
                ((ObjectNode) tap).put("mixerC", 45);
            }
            return root;
        } catch (JsonProcessingException unreadable) {
            throw new IllegalStateException(unreadable);
        }
    }
}
