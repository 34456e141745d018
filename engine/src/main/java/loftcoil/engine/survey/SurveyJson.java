package loftcoil.engine.survey;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import loftcoil.engine.design.Coded;
import loftcoil.engine.design.LaggingChoice;
import loftcoil.engine.design.Sketch;
import loftcoil.engine.fault.Allowed;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.fault.KnownNames;
import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.json.JsonFields;
import loftcoil.engine.json.JsonText;
import loftcoil.engine.pipe.TubeTable;

/** Reads and writes a survey as JSON: the house in the shape of a design, and beside it what was walked. */
public final class SurveyJson {

    private static final JsonText TEXT = new JsonText(60_000);
    private static final String MADE_FOR = "design";
    private static final JsonNodeFactory JSON = JsonNodeFactory.instance;

    private SurveyJson() {}

    /** A survey as JSON, without a word on the design it belongs to. */
    public static String write(Survey survey) {
        return text(survey, JSON.objectNode());
    }

    /**
     * A survey as JSON.
     *
     * @param design name of the design it belongs to
     */
    public static String write(Survey survey, String design) {
        return text(survey, JSON.objectNode().put(MADE_FOR, design));
    }

    /** Name of the design that a survey belongs to; empty where it does not say, as older ones do not. */
    public static Optional<String> madeFor(String json) {
        try {
            return Optional.of(TEXT.object("survey", json).path(MADE_FOR).asText())
                    .filter(name -> !name.isEmpty());
        } catch (RefusedException noJson) {
            return Optional.empty();
        }
    }

    private static String text(Survey survey, ObjectNode out) {
        out.set("house", TEXT.object("house", survey.sketch().json()));
        out.set("hotRun", run(survey.hot()));
        out.set("coldRun", run(survey.cold()));
        survey.habits().ifPresent(habits -> out.set("habits", habits(habits)));
        return out.toPrettyString() + "\n";
    }

    private static ArrayNode run(List<WalkedPipe> pipes) {
        ArrayNode out = JSON.arrayNode();
        for (WalkedPipe pipe : pipes) {
            ObjectNode one = out.addObject();
            one.put("name", pipe.name());
            one.put("way", pipe.way().code());
            one.put("lengthM", pipe.lengthM());
            one.put("slopeMmPerM", pipe.slopeMmPerM());
            pipe.headingDeg().ifPresent(heading -> one.put("headingDeg", heading));
            one.put("elbows90", pipe.elbows90());
            one.put("elbows45", pipe.elbows45());
            one.put("tube", pipe.tube());
            pipe.lagging().ifPresent(lagging -> {
                one.put("laggingMaterial", lagging.material());
                one.put("laggingMm", lagging.thicknessMm());
            });
            one.put("aroundC", pipe.aroundC());
            pipe.aroundFireOutC().ifPresent(around -> one.put("aroundFireOutC", around));
            if (pipe.outdoors()) {
                one.put("outdoors", true);
            }
            one.put("measured", pipe.measured());
        }
        return out;
    }

    private static ObjectNode habits(Habits habits) {
        return JSON.objectNode()
                .put("people", habits.people())
                .put("washesAWeek", habits.washesAWeek())
                .put("bathsAWeek", habits.bathsAWeek())
                .put("dishesADay", habits.dishesADay())
                .put("loadsAWeek", habits.loadsAWeek())
                .put("sink", habits.sink())
                .put("tub", habits.tub())
                .put("machine", habits.machine());
    }

    /**
     * Reads a survey.
     *
     * @param json the text of the file
     * @throws RefusedException with every fault found, each with the path of its field
     */
    public static Survey read(String json) {
        JsonFields in = JsonFields.of(TEXT.object("survey", json));
        if (in.has(MADE_FOR)) {
            in.text(MADE_FOR);
        }
        Optional<Sketch> house = in.needed("house", JsonFields.OBJECT).flatMap(node -> house(in, node));
        List<WalkedPipe> hot = pipes(in, "hotRun");
        List<WalkedPipe> cold = pipes(in, "coldRun");
        Optional<Habits> habits = in.ask("habits").flatMap(node -> habits(in, node));
        in.done();
        if (!in.faults().isEmpty() || house.isEmpty()) {
            throw new RefusedException(in.faults());
        }
        return new Survey(house.get(), hot, cold, habits);
    }

    private static Optional<Sketch> house(JsonFields in, JsonNode node) {
        return under(in, "house", () -> Sketch.read(in.section("house", node).json()));
    }

    private static List<WalkedPipe> pipes(JsonFields in, String name) {
        List<WalkedPipe> pipes = in.each(name, SurveyJson::pipe);
        Survey.PIECES.faultIn(name, pipes.size()).ifPresent(in::fault);
        return pipes;
    }

    private static WalkedPipe pipe(JsonFields in) {
        int before = in.faults().size();
        String name = in.words("name", "a name");
        Way way = way(in);
        WalkedPipe pipe = new WalkedPipe(
                name,
                way,
                number(in, "lengthM"),
                number(in, "slopeMmPerM"),
                numberIfSaid(in, "headingDeg"),
                whole(in, "elbows90"),
                whole(in, "elbows45"),
                tube(in),
                lagging(in),
                number(in, "aroundC"),
                numberIfSaid(in, "aroundFireOutC"),
                in.has("outdoors") && in.flag("outdoors"),
                in.flag("measured"));
        in.done();
        // What is missing or no number would be told again for the placeholder that stands in for it.
        if (in.faults().size() == before) {
            pipe.faults(in::at).forEach(in::fault);
        }
        return pipe;
    }

    private static Way way(JsonFields in) {
        String code = in.text("way");
        Optional<Way> way = Coded.find(Way.class, code);
        if (way.isEmpty() && in.ask("way").filter(JsonNode::isTextual).isPresent()) {
            in.fault(new KnownNames("way", Coded.codes(Way.class)).unknown(in.at("way"), code));
        }
        return way.orElse(Way.UP);
    }

    private static String tube(JsonFields in) {
        String tube = in.text("tube");
        if (in.ask("tube").filter(JsonNode::isTextual).isPresent()
                && TubeTable.find(tube).isEmpty()) {
            under(in, "", () -> TubeTable.require(in.at("tube"), tube));
        }
        return tube;
    }

    private static Optional<LaggingChoice> lagging(JsonFields in) {
        if (!in.has("laggingMaterial")) {
            return Optional.empty();
        }
        return Optional.of(new LaggingChoice(in.text("laggingMaterial"), number(in, "laggingMm")));
    }

    private static Optional<Habits> habits(JsonFields in, JsonNode node) {
        JsonFields told = in.section("habits", node);
        int people = told.whole("people", new Allowed(1, 50, "people"));
        double washes = told.number("washesAWeek", "a number");
        double baths = told.number("bathsAWeek", "a number");
        double dishes = told.number("dishesADay", "a number");
        double loads = told.number("loadsAWeek", "a number");
        String sink = told.text("sink");
        String tub = told.text("tub");
        String machine = told.text("machine");
        told.done();
        return told.faults().isEmpty()
                ? under(in, "habits", () -> new Habits(people, washes, baths, dishes, loads, sink, tub, machine))
                : Optional.empty();
    }

    private static double number(JsonFields in, String name) {
        return in.number(name, "a number");
    }

    private static int whole(JsonFields in, String name) {
        return in.needed(name, "a whole number")
                .map(node -> in.whole(name, node))
                .orElse(Integer.MIN_VALUE);
    }

    private static OptionalDouble numberIfSaid(JsonFields in, String name) {
        return in.has(name) ? OptionalDouble.of(number(in, name)) : OptionalDouble.empty();
    }

    /** What is made of a part, its faults noted under the name of that part. */
    private static <T> Optional<T> under(JsonFields in, String part, Supplier<T> make) {
        try {
            return Optional.of(make.get());
        } catch (RefusedException refused) {
            List<Fault> faults = new ArrayList<>(refused.faults());
            String before = part.isEmpty() ? "" : part + ".";
            faults.forEach(
                    fault -> in.fault(new Fault(before + fault.path(), fault.given(), fault.allowed(), fault.why())));
            return Optional.empty();
        }
    }
}
