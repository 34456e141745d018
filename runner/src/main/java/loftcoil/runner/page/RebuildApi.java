package loftcoil.runner.page;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Map;
import loftcoil.runner.show.LearnerApp;

/**
 * What the page may ask of a rebuild. An old design goes in as its text, never as a path.
 *
 * <pre>
 * GET  rebuild                                   RebuildView.Start of the learner's own design
 * POST rebuild-kept     name                     RebuildView.Start of a design the folder keeps
 * POST rebuild-from     old from                 RebuildView.Start of a design in a file of the learner's
 * POST rebuild-compare  old changes year         RebuildView.SideBySide
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
                        PageApi.Ask.change(body -> json.of(bench.rebuild().kept(Body.text(body, "name")))),
                "rebuild-from", PageApi.Ask.change(this::from),
                "rebuild-compare", PageApi.Ask.change(this::compare),
                "rebuild-take", PageApi.Ask.change(this::take));
    }

    private JsonNode from(JsonNode body) {
        String old = Body.text(body, OLD);
        String from = Body.text(body, "from");
        return json.of(bench.rebuild().from(old, from));
    }

    private JsonNode compare(JsonNode body) {
        String old = Body.text(body, OLD);
        Map<String, String> changes = Body.texts(body, CHANGES);
        boolean year = Body.flag(body, "year");
        return json.of(bench.rebuild().compare(old, changes, year));
    }

    private JsonNode take(JsonNode body) {
        String old = Body.text(body, OLD);
        Map<String, String> changes = Body.texts(body, CHANGES);
        return json.of(bench.rebuild().takeOver(old, changes));
    }
}
