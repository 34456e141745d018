package loftcoil.runner.progress;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Map;
import loftcoil.runner.course.MovedLessons;

/** Brings the work of an earlier edition to the lessons that have its steps now. What is not of the right shape stays as it is. */
final class OlderLessons {

    private OlderLessons() {}

    /** Changes a whole tree of progress. */
    static void bring(ObjectNode progress) {
        if (!(progress.get("lessons") instanceof ObjectNode older)) {
            return;
        }
        if (progress.path("lesson").isTextual()) {
            String open = progress.path("lesson").textValue();
            progress.put(
                    "lesson",
                    MovedLessons.now(open, older.path(open).path("step").asText()));
        }
        ObjectNode lessons = progress.objectNode();
        for (Map.Entry<String, JsonNode> lesson : older.properties()) {
            if (lesson.getValue() instanceof ObjectNode work) {
                cut(lesson.getKey(), work, lessons);
            } else {
                lessons.set(MovedLessons.now(lesson.getKey()), lesson.getValue());
            }
        }
        progress.set("lessons", lessons);
    }

    private static void cut(String lesson, ObjectNode work, ObjectNode lessons) {
        ObjectNode whole = lessons.withObjectProperty(MovedLessons.now(lesson));
        for (Map.Entry<String, JsonNode> field : work.properties()) {
            String name = field.getKey();
            JsonNode value = field.getValue();
            if (value.isTextual() && name.equals("step")) {
                part(lessons, lesson, value.textValue()).set(name, value);
            } else if (value instanceof ArrayNode steps) {
                whole.withArrayProperty(name);
                steps.forEach(step -> part(lessons, lesson, step.asText())
                        .withArrayProperty(name)
                        .add(step));
            } else if (value instanceof ObjectNode steps) {
                whole.withObjectProperty(name);
                steps.properties().forEach(step -> part(lessons, lesson, step.getKey())
                        .withObjectProperty(name)
                        .set(step.getKey(), step.getValue()));
            } else {
                whole.set(name, value);
            }
        }
        if (work.has("step") && !whole.has("step")) {
            whole.put("step", "");
        }
    }

    /** The work in the lesson that has that step now, begun where there is none. */
    private static ObjectNode part(ObjectNode lessons, String lesson, String step) {
        ObjectNode part = lessons.withObjectProperty(MovedLessons.now(lesson, step));
        if (part.isEmpty()) {
            part.put("step", "");
            part.putObject("snippets");
            part.putArray("ran");
            part.putObject("answers");
        }
        return part;
    }
}
