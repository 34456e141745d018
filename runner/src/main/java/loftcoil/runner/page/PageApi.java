package loftcoil.runner.page;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import loftcoil.engine.fault.Allowed;
import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.json.JsonFields;
import loftcoil.engine.words.Units;
import loftcoil.runner.show.LearnerApp;
import loftcoil.runner.show.View;

/**
 * What the page may ask, below {@code /api/}. Answers are the records of {@link View} as JSON, with each markdown text as HTML
 * under a name of its own ({@code markdown} becomes {@code html}, {@code hintMarkdown} becomes {@code hintHtml}). A refusal is
 * {@code {"words": …}} with a status of 400 or above.
 *
 * <pre>
 * GET  course                                    View.Course
 * GET  lesson/ID                                 View.Lesson; a snippet that ran since the start has its View.Run as "last"
 * GET  design                                    View.Design
 * GET  safety                                    View.Safety of the design, the year judged too; takes about a second
 * GET  effect                                    View.Effect of the last change of the design, the year judged too
 * GET  clears                                    View.Clears: what would clear its dangers, or how far the search is
 * POST clears-search                             View.Clears; begins the search
 * POST clears-follow   danger way                View.Followed; takes a way that was found into the design
 * POST clears-stop                               View.Clears; ends it
 * POST build                                     View.Building; begins to work out the build sheet
 * GET  build-far                                 View.Building: how far it is
 * POST build-stop                                View.Building; ends it
 * GET  words                                     View.Words
 * POST search    text                            list of View.Found
 * GET  conduct                                   View.ConductTable
 * POST run       lesson step source dragged      View.Run
 * POST coarse    lesson step source dragged      {"charts": coarse pictures of a value, from values near by; may be none}
 * POST ahead     lesson step source dragged stands  {}; runs it for coarse pictures near that value
 * POST keep      lesson step source              {}; 507 where the folder cannot take it
 * POST units         units                       View.Course; 400 for units that are not known
 * POST save                                      {}; 507 where the folder still cannot take what waits
 * POST put-back  lesson step                     View.Snippet
 * POST answer    lesson step text                View.Reply
 * POST tried     lesson step value         the design with what is dragged as a ghost, if it can be built
 * POST mend      lesson step moved         MendView
 * POST complete  lesson step source cursor       list of View.Suggestion
 * POST stop                                      {}
 * </pre>
 *
 * <p>While the learner's folder cannot take the work, every answer that is an object has {@code unsaved}: why, and what to do.
 *
 * <p>{@link RefreshApi}, {@link RebuildApi}, {@link DesignsApi} and {@link SurveyApi} have more.
 */
final class PageApi {

    private static final String LESSON = "lesson/";

    private final LearnerApp bench;
    private final ViewJson json = new ViewJson();
    private final LastRuns lastRuns = new LastRuns();
    private final Map<String, Ask> asks;

    PageApi(LearnerApp bench) {
        this.bench = bench;
        Map<String, Ask> all = new HashMap<>(Map.of(
                "course", Ask.read(body -> json.of(bench.course())),
                "design", Ask.read(body -> json.of(bench.design())),
                "words", Ask.read(body -> json.of(bench.words())),
                "run", Ask.change(this::run),
                "keep", Ask.change(this::keep),
                "put-back", Ask.change(this::putBack),
                "answer", Ask.change(this::answer),
                "mend", Ask.change(this::mend),
                "complete", Ask.change(this::complete),
                "stop", new Ask("POST", true, this::stop)));
        all.put("search", Ask.change(body -> json.of(bench.search(body.text("text")))));
        all.put("coarse", Ask.change(this::coarse));
        all.put("ahead", Ask.change(this::ahead));
        all.put("tried", Ask.change(this::tried));
        all.put("save", Ask.change(this::save));
        all.put("units", Ask.change(this::units));
        all.put("conduct", Ask.read(body -> json.of(bench.conduct())));
        all.put("safety", Ask.read(body -> json.of(bench.safety())));
        all.put("effect", Ask.read(body -> json.of(bench.effect())));
        all.put("clears", Ask.read(body -> json.of(bench.clears())));
        all.put("clears-search", Ask.change(body -> json.of(bench.searchClears())));
        all.put("clears-follow", Ask.change(this::follow));
        all.put("build", Ask.change(body -> json.of(bench.startBuild())));
        all.put("build-far", new Ask("GET", true, body -> json.of(bench.building())));
        all.put("build-stop", new Ask("POST", true, body -> json.of(bench.stopBuild())));
        all.put("clears-stop", new Ask("POST", true, body -> json.of(bench.stopClears())));
        all.putAll(new RefreshApi(bench, json).asks());
        all.putAll(new RebuildApi(bench, json).asks());
        all.putAll(new DesignsApi(bench, json).asks());
        all.putAll(new SurveyApi(bench, json).asks());
        this.asks = Map.copyOf(all);
    }

    /** Answers for nobody what every page asks first: its classes are then there when a browser has started. */
    void makeReady() {
        try {
            json.of(bench.course());
        } catch (RuntimeException notNow) {
            // Whoever asks will meet the same trouble and be told.
            return;
        }
    }

    /** The ask of that name, if there is one. */
    Optional<Ask> find(String name) {
        if (name.startsWith(LESSON)) {
            String id = name.substring(LESSON.length());
            return id.matches("[A-Za-z0-9_-]{1,100}") ? Optional.of(Ask.read(body -> lesson(id))) : Optional.empty();
        }
        return Optional.ofNullable(asks.get(name));
    }

    private JsonNode lesson(String id) {
        JsonNode lesson = json.of(bench.lesson(id));
        lastRuns.addTo(id, lesson.path("steps"));
        return lesson;
    }

    private JsonNode follow(JsonFields body) {
        return json.of(bench.follow(body.text("danger"), (int) body.number("way", "the number of a way")));
    }

    private JsonNode run(JsonFields body) {
        String lesson = body.text("lesson");
        String step = body.text("step");
        String source = body.text("source");
        Map<String, Double> dragged = numbers(body, "dragged");
        JsonNode run = json.of(bench.run(lesson, step, source, dragged));
        lastRuns.put(lesson, step, source, dragged, run);
        return run;
    }

    private static Map<String, Double> numbers(JsonFields body, String field) {
        return body.byName(field, "names with numbers", (numbers, name) -> numbers.number(name, "a number"));
    }

    private JsonNode coarse(JsonFields body) {
        ObjectNode answer = json.object();
        answer.set(
                "charts",
                json.of(bench.coarse(
                        body.text("lesson"), body.text("step"), body.text("source"), numbers(body, "dragged"))));
        return answer;
    }

    private JsonNode ahead(JsonFields body) {
        bench.ahead(
                body.text("lesson"),
                body.text("step"),
                body.text("source"),
                numbers(body, "dragged"),
                numbers(body, "stands"));
        return nothing();
    }

    private JsonNode keep(JsonFields body) {
        bench.keep(body.text("lesson"), body.text("step"), body.text("source"));
        return save(body);
    }

    private JsonNode units(JsonFields body) {
        String named = body.text("units");
        bench.choose(Units.named(named).orElseThrow(() -> RefusedException.of("units", named, "metric, us")));
        // Their plots are in the units from before.
        lastRuns.forget();
        return json.of(bench.course());
    }

    private JsonNode save(JsonFields body) {
        bench.save();
        return nothing();
    }

    /** The answer to an ask, with a word on work that is not in the folder yet. */
    JsonNode answerTo(Ask ask, JsonFields body) {
        JsonNode answer = ask.call().apply(body);
        if (answer instanceof ObjectNode object) {
            bench.unsaved().ifPresent(why -> object.put("unsaved", why));
        }
        return answer;
    }

    private JsonNode putBack(JsonFields body) {
        return json.of(bench.putBack(body.text("lesson"), body.text("step")));
    }

    private JsonNode answer(JsonFields body) {
        return json.of(bench.answer(body.text("lesson"), body.text("step"), body.text("text")));
    }

    private JsonNode tried(JsonFields body) {
        String lesson = body.text("lesson");
        String step = body.text("step");
        double value = body.number("value", "a number");
        ObjectNode answer = json.object();
        bench.tried(lesson, step, value).ifPresent(picture -> answer.set("picture", json.of(picture)));
        return answer;
    }

    private JsonNode mend(JsonFields body) {
        return json.of(bench.mend(body.text("lesson"), body.text("step"), body.text("moved")));
    }

    private JsonNode complete(JsonFields body) {
        String source = body.text("source");
        int cursor = body.whole("cursor", new Allowed(0, source.length(), ""));
        return json.of(bench.complete(body.text("lesson"), body.text("step"), source, cursor));
    }

    private JsonNode stop(JsonFields body) {
        bench.stop();
        return nothing();
    }

    private ObjectNode nothing() {
        return json.object();
    }

    /**
     * One thing to ask.
     *
     * @param method HTTP method
     * @param atOnce true where it must be answered however busy we are
     * @param call gives the answer to a body
     */
    record Ask(String method, boolean atOnce, Function<JsonFields, JsonNode> call) {

        static Ask read(Function<JsonFields, JsonNode> call) {
            return new Ask("GET", false, call);
        }

        static Ask change(Function<JsonFields, JsonNode> call) {
            return new Ask("POST", false, call);
        }

        /** True where it brings a body and must say which page it is from. */
        boolean changes() {
            return method.equals("POST");
        }
    }
}
