package loftcoil.runner.page;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** What the snippets last came to since the server started, so that a reload of the page shows it again. */
final class LastRuns {

    /** Charts are big; a course has about this many snippets. */
    private static final int MOST = 200;

    private final Map<String, Last> runs = new LinkedHashMap<>() {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Last> eldest) {
            return size() > MOST;
        }
    };

    synchronized void put(String lesson, String step, String source, Map<String, Double> dragged, JsonNode run) {
        runs.remove(key(lesson, step));
        runs.put(key(lesson, step), new Last(source, Map.copyOf(dragged), run));
    }

    synchronized void forget() {
        runs.clear();
    }

    /** Adds {@code last} and {@code dragged} to each snippet whose text is still the one that ran. */
    void addTo(String lesson, JsonNode steps) {
        for (JsonNode step : steps) {
            if (step instanceof ObjectNode snippet
                    && snippet.path("kind").asText().equals("snippet")) {
                get(lesson, snippet.path("id").asText())
                        .filter(last ->
                                last.source.equals(snippet.path("source").asText()))
                        .ifPresent(last -> {
                            snippet.set("last", last.run);
                            snippet.putPOJO("dragged", last.dragged);
                        });
            }
        }
    }

    private synchronized Optional<Last> get(String lesson, String step) {
        return Optional.ofNullable(runs.get(key(lesson, step)));
    }

    private static String key(String lesson, String step) {
        return lesson + "/" + step;
    }

    private record Last(String source, Map<String, Double> dragged, JsonNode run) {}
}
