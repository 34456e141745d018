package loftcoil.runner.page;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Map;
import loftcoil.engine.json.JsonFields;
import loftcoil.runner.show.LearnerApp;

/**
 * What the page may ask of the refresher.
 *
 * <pre>
 * GET  refresher                                 RefreshView.Path
 * POST refresher-answer     id text              RefreshView.Said
 * POST refresher-forgotten  id                   RefreshView.Said
 * POST refresher-again                           RefreshView.Path
 * </pre>
 */
final class RefreshApi {

    private final LearnerApp bench;
    private final ViewJson json;

    RefreshApi(LearnerApp bench, ViewJson json) {
        this.bench = bench;
        this.json = json;
    }

    Map<String, PageApi.Ask> asks() {
        return Map.of(
                "refresher", PageApi.Ask.read(body -> json.of(bench.refresh().path())),
                "refresher-answer", PageApi.Ask.change(this::answer),
                "refresher-forgotten",
                        PageApi.Ask.change(body -> json.of(bench.refresh().forgotten(body.text("id")))),
                "refresher-again",
                        PageApi.Ask.change(body -> json.of(bench.refresh().again())));
    }

    private JsonNode answer(JsonFields body) {
        String id = body.text("id");
        String text = body.text("text");
        return json.of(bench.refresh().answer(id, text));
    }
}
