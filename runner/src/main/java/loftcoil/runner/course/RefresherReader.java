package loftcoil.runner.course;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import loftcoil.engine.design.JsonText;

/** Reads {@code refresher.json} beside the exercises; what does not read becomes a fault with its field. */
final class RefresherReader {

    /** The file's name in the exercises' folder. */
    static final String FILE = "refresher.json";

    private static final String ALLOWED = "a seed and lessons with two or three questions each";
    private static final JsonText TEXT = new JsonText(1_000);

    private final CourseFiles shelf;

    RefresherReader(CourseFiles shelf) {
        this.shelf = shelf;
    }

    /** The refresher of these exercises; none where there is no such file. */
    Refresher read() {
        return shelf.has(FILE) ? shelf.text(FILE).map(this::read).orElse(Refresher.NONE) : Refresher.NONE;
    }

    private Refresher read(String text) {
        JsonNode tree;
        try {
            tree = TEXT.object(text);
        } catch (JsonText.UnreadableException broken) {
            String place =
                    broken.place().map(at -> at.line() + ":" + at.column()).orElse("");
            shelf.fault(FILE, place, broken.words(), ALLOWED);
            return Refresher.NONE;
        }
        fields(tree, "", Set.of("seed", "lessons"));
        JsonNode seed = tree.path("seed");
        if (!seed.canConvertToLong() || !seed.isIntegralNumber()) {
            fault("seed", shown(seed), "a whole number");
        }
        if (!tree.path("lessons").isObject()) {
            fault("lessons", shown(tree.path("lessons")), "lessons by name, each with its questions");
        }
        List<Refresher.Part> parts = new ArrayList<>();
        for (Map.Entry<String, JsonNode> lesson : tree.path("lessons").properties()) {
            parts.add(new Refresher.Part(lesson.getKey(), questions("lessons." + lesson.getKey(), lesson.getValue())));
        }
        return new Refresher(seed.asLong(), parts);
    }

    private List<Refresher.Quick> questions(String field, JsonNode list) {
        if (!list.isArray()) {
            fault(field, shown(list), "a list of questions");
        }
        List<Refresher.Quick> questions = new ArrayList<>();
        for (int i = 0; i < list.size() && list.isArray(); i++) {
            String place = field + "[" + i + "]";
            JsonNode question = list.get(i);
            fields(question, place, Set.of("exercise", "seconds"));
            JsonNode exercise = question.path("exercise");
            JsonNode seconds = question.path("seconds");
            if (!exercise.isTextual()) {
                fault(place + ".exercise", shown(exercise), "the path of an exercise");
            }
            if (!(seconds.isInt() && seconds.intValue() >= 5 && seconds.intValue() <= 120)) {
                fault(place + ".seconds", shown(seconds), "5 to 120");
            }
            questions.add(new Refresher.Quick(exercise.asText(), seconds.asInt()));
        }
        return questions;
    }

    private void fields(JsonNode object, String place, Set<String> known) {
        if (!object.isObject()) {
            fault(place, shown(object), "an object");
        }
        object.properties().stream()
                .map(Map.Entry::getKey)
                .filter(name -> !known.contains(name))
                .forEach(name -> fault((place.isEmpty() ? "" : place + ".") + name, "not known here", "only " + known));
    }

    private void fault(String field, String what, String allowed) {
        shelf.fault(FILE, " " + field, what, allowed);
    }

    private static String shown(JsonNode value) {
        return value.isMissingNode() ? "missing" : value.toString();
    }
}
