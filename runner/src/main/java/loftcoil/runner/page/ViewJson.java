package loftcoil.runner.page;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.datatype.jdk8.Jdk8Module;
import java.util.List;
import java.util.Map;

/** Views as JSON for the page, with each markdown text made HTML on the way. */
final class ViewJson {

    private static final String MARKDOWN = "markdown";
    private static final String ENDING = "Markdown";

    private final ObjectMapper mapper = new ObjectMapper().registerModule(new Jdk8Module());
    private final ProseHtml prose = new ProseHtml();

    JsonNode of(Object view) {
        JsonNode tree = mapper.valueToTree(view);
        dress(tree);
        return tree;
    }

    ObjectNode object() {
        return mapper.createObjectNode();
    }

    private void dress(JsonNode node) {
        if (node instanceof ObjectNode object) {
            for (Map.Entry<String, JsonNode> field : List.copyOf(object.properties())) {
                String name = htmlName(field.getKey());
                if (field.getValue().isTextual() && !name.isEmpty()) {
                    object.remove(field.getKey());
                    object.put(name, prose.html(field.getValue().textValue()));
                } else {
                    dress(field.getValue());
                }
            }
        } else if (node instanceof ArrayNode array) {
            array.forEach(this::dress);
        }
    }

    /** Name the HTML goes under; empty where the field holds no markdown. */
    private static String htmlName(String name) {
        if (name.equals(MARKDOWN)) {
            return "html";
        }
        return name.endsWith(ENDING) ? name.substring(0, name.length() - ENDING.length()) + "Html" : "";
    }
}
