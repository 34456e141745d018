package loftcoil.runner.page;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import loftcoil.engine.json.JsonFields;
import loftcoil.runner.show.LearnerApp;

/**
 * What the page may ask while a house is measured.
 *
 * <pre>
 * GET  survey                                    SurveyView.House
 * POST survey-tell      typed guessed            SurveyView.House
 * POST survey-walk      run pieces               SurveyView.House
 * POST survey-taps      trunk taps               SurveyView.House
 * POST survey-habits    habits                   SurveyView.House
 * POST survey-climate     text                   SurveyView.House, from the text of a weather file
 * POST survey-estimate    typed                  SurveyView.House, sun and air as people remember them
 * POST survey-no-panes                           SurveyView.House
 * POST survey-afresh      from                   SurveyView.House
 * POST survey-follow                             SurveyView.House, with what the design has
 * POST survey-take                               RebuildView.Taken
 * </pre>
 */
final class SurveyApi {

    private final LearnerApp bench;
    private final ViewJson json;

    SurveyApi(LearnerApp bench, ViewJson json) {
        this.bench = bench;
        this.json = json;
    }

    Map<String, PageApi.Ask> asks() {
        return Map.ofEntries(
                Map.entry(
                        "survey-climate",
                        PageApi.Ask.change(body -> json.of(bench.survey().climateFile(body.text("text"))))),
                Map.entry(
                        "survey-estimate",
                        PageApi.Ask.change(body -> json.of(bench.survey()
                                .climateEstimate(body.byName("typed", "names with texts", JsonFields::text))))),
                Map.entry(
                        "survey",
                        PageApi.Ask.read(body -> json.of(bench.survey().house()))),
                Map.entry("survey-tell", PageApi.Ask.change(this::tell)),
                Map.entry("survey-walk", PageApi.Ask.change(this::walk)),
                Map.entry(
                        "survey-taps",
                        PageApi.Ask.change(body -> json.of(bench.survey()
                                .taps(
                                        body.byName("trunk", "names with texts", JsonFields::text),
                                        rows(body, "taps"))))),
                Map.entry(
                        "survey-habits",
                        PageApi.Ask.change(body -> json.of(
                                bench.survey().habits(body.byName("habits", "names with texts", JsonFields::text))))),
                Map.entry(
                        "survey-no-panes",
                        PageApi.Ask.change(body -> json.of(bench.survey().noPanes()))),
                Map.entry(
                        "survey-afresh",
                        PageApi.Ask.change(body -> json.of(bench.survey().afresh(body.text("from"))))),
                Map.entry(
                        "survey-follow",
                        PageApi.Ask.change(body -> json.of(bench.survey().follow()))),
                Map.entry(
                        "survey-take",
                        PageApi.Ask.change(body -> json.of(bench.survey().take()))));
    }

    private JsonNode tell(JsonFields body) {
        Map<String, String> typed = body.byName("typed", "paths with texts", JsonFields::text);
        return json.of(bench.survey().tell(typed, body.flag("guessed")));
    }

    private JsonNode walk(JsonFields body) {
        String run = body.text("run");
        return json.of(bench.survey().walk(run, rows(body, "pieces")));
    }

    private static List<Map<String, String>> rows(JsonFields body, String name) {
        return body.each(name, row -> {
            Map<String, String> texts = new HashMap<>();
            row.names().forEach(field -> texts.put(field, row.text(field)));
            return texts;
        });
    }
}
