package loftcoil.runner.course;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import loftcoil.engine.fault.Allowed;
import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.json.JsonFields;
import loftcoil.engine.json.JsonText;

/** Reads {@code refresher.json} beside the exercises; what does not read becomes a fault with its field. */
final class RefresherReader {

    /** The file's name in the exercises' folder. */
    static final String FILE = "refresher.json";

    private static final Allowed SECONDS = new Allowed(5, 120, "s");
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
        try {
            JsonFields fields = JsonFields.of(TEXT.object("", text));
            Refresher refresher = refresher(fields);
            shelf.faults(FILE, fields.faults());
            return refresher;
        } catch (RefusedException unreadable) {
            shelf.faults(FILE, unreadable.faults());
            return Refresher.NONE;
        }
    }

    private static Refresher refresher(JsonFields fields) {
        int seed = fields.whole("seed", new Allowed(0, Integer.MAX_VALUE, ""));
        Map<String, List<Refresher.Quick>> lessons = fields.byName(
                "lessons",
                "lessons by name, each with two or three questions",
                (byName, lesson) -> byName.each(lesson, RefresherReader::question));
        fields.done();
        List<Refresher.Part> parts = new ArrayList<>();
        lessons.forEach((lesson, questions) -> parts.add(new Refresher.Part(lesson, questions)));
        return new Refresher(seed, parts);
    }

    private static Refresher.Quick question(JsonFields question) {
        Refresher.Quick quick = new Refresher.Quick(
                question.words("exercise", "the path of an exercise"), question.whole("seconds", SECONDS));
        question.done();
        return quick;
    }
}
