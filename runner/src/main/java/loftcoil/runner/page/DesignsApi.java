package loftcoil.runner.page;

import java.util.HashMap;
import java.util.Map;
import java.util.function.Function;
import loftcoil.engine.fault.Allowed;
import loftcoil.engine.json.JsonFields;
import loftcoil.runner.show.DesignsApp;
import loftcoil.runner.show.DesignsView;
import loftcoil.runner.show.LearnerApp;

/**
 * What the page may ask of the learner's designs; each answer but one is a DesignsView.Shelf. A key is that of a card, empty for the
 * design that is taken up.
 *
 * <pre>
 * GET  designs
 * POST designs-start      dwelling name
 * POST designs-open       text from
 * POST designs-copy       key name
 * POST designs-rename     key name
 * POST designs-take-up    key
 * POST designs-remove     key
 * POST designs-bring-back key
 * POST designs-undo
 * POST designs-redo
 * POST designs-back-to    number
 * POST designs-differences key                      RebuildView.Difference of that design from the one that is taken up, a list
 * POST designs-saved      key                       DesignsView.Saved
 * </pre>
 */
final class DesignsApi {

    private static final String KEY = "key";
    private static final String NAME = "name";
    private static final Allowed NUMBER = new Allowed(0, Integer.MAX_VALUE, "");

    private final LearnerApp bench;
    private final ViewJson json;

    DesignsApi(LearnerApp bench, ViewJson json) {
        this.bench = bench;
        this.json = json;
    }

    Map<String, PageApi.Ask> asks() {
        Map<String, PageApi.Ask> asks = new HashMap<>();
        asks.put("designs", PageApi.Ask.read(body -> json.of(designs().shelf())));
        put(asks, "start", body -> designs().start(body.text("dwelling"), body.text(NAME)));
        put(asks, "open", body -> designs().open(body.text("text"), body.text("from")));
        put(asks, "copy", body -> designs().copy(body.text(KEY), body.text(NAME)));
        put(asks, "rename", body -> designs().rename(body.text(KEY), body.text(NAME)));
        put(asks, "take-up", body -> designs().takeUp(body.text(KEY)));
        put(asks, "remove", body -> designs().remove(body.text(KEY)));
        put(asks, "bring-back", body -> designs().bringBack(body.text(KEY)));
        put(asks, "undo", body -> designs().undo());
        put(asks, "redo", body -> designs().redo());
        put(asks, "back-to", body -> designs().backTo(body.whole("number", NUMBER)));
        asks.put(
                "designs-differences",
                PageApi.Ask.change(body -> json.of(designs().differences(body.text(KEY)))));
        asks.put("designs-saved", PageApi.Ask.change(body -> json.of(designs().saved(body.text(KEY)))));
        return asks;
    }

    private DesignsApp designs() {
        return bench.designs();
    }

    private void put(Map<String, PageApi.Ask> asks, String name, Function<JsonFields, DesignsView.Shelf> call) {
        asks.put("designs-" + name, PageApi.Ask.change(body -> json.of(call.apply(body))));
    }
}
