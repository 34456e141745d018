package loftcoil.runner.page;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Map;
import loftcoil.engine.json.JsonFields;
import loftcoil.runner.show.LearnerApp;

/**
 * What the page may ask of a rebuild. An old design goes in as its text, never as a path.
 *
 * <pre>
 * GET  rebuild                                   RebuildView.Start of the learner's own design
 * POST rebuild-kept     name                     RebuildView.Start of a design the folder keeps
 * POST rebuild-from     old from                 RebuildView.Start of a design in a file of the learner's
 * POST rebuild-compare  old changes year         RebuildView.SideBySide
 * GET  rebuild-far                               RebuildView.Far of a comparison with its year
 * POST rebuild-stop                              {}; ends that
 * POST rebuild-take     old changes              RebuildView.Taken
 * </pre>
 */
final class RebuildApi {

    private static final String OLD = "old";
    private static final String CHANGES = "changes";

    private final LearnerApp bench;
    private final ViewJson json;

    RebuildApi(LearnerApp bench, ViewJson json) {
        this.bench = bench;
        this.json = json;
    }

    Map<String, PageApi.Ask> asks() {
        return Map.of(
                "rebuild", PageApi.Ask.read(body -> json.of(bench.rebuild().own())),
                "rebuild-kept",
                        PageApi.Ask.change(body -> json.of(bench.rebuild().kept(body.text("name")))),
                "rebuild-from", PageApi.Ask.change(this::from),
                "rebuild-compare", PageApi.Ask.change(this::compare),
                "rebuild-take", PageApi.Ask.change(this::take),
                "rebuild-far",
                        new PageApi.Ask(
                                "GET", true, body -> json.of(bench.rebuild().far())),
                "rebuild-stop", new PageApi.Ask("POST", true, this::stop));
    }

    private JsonNode from(JsonFields body) {
        String old = body.text(OLD);
        String from = body.text("from");
        return json.of(bench.rebuild().from(old, from));
    }

    private JsonNode compare(JsonFields body) {
        String old = body.text(OLD);
        Map<String, String> changes = body.byName(CHANGES, "names with texts", JsonFields::text);
        boolean year = body.flag("year");
        return json.of(bench.rebuild().compare(old, changes, year));
    }

    private JsonNode stop(JsonFields body) {
        bench.rebuild().stop();
        return json.object();
    }

    private JsonNode take(JsonFields body) {
        String old = body.text(OLD);
        Map<String, String> changes = body.byName(CHANGES, "names with texts", JsonFields::text);
        return json.of(bench.rebuild().takeOver(old, changes));
    }
}
