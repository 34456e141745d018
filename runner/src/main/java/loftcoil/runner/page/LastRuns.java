package loftcoil.runner.page;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.zip.Deflater;
import java.util.zip.DeflaterOutputStream;
import java.util.zip.InflaterInputStream;

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

    private final ObjectMapper mapper = new ObjectMapper();

    void put(String lesson, String step, String source, Map<String, Double> dragged, JsonNode run) {
        Last last = new Last(source, Map.copyOf(dragged), packed(run));
        synchronized (this) {
            runs.remove(key(lesson, step));
            runs.put(key(lesson, step), last);
        }
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
                            snippet.set("last", unpacked(last.run));
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

    /** No record: its bytes are compared by nobody. */
    private static final class Last {

        private final String source;
        private final Map<String, Double> dragged;
        private final byte[] run;

        Last(String source, Map<String, Double> dragged, byte[] run) {
            this.source = source;
            this.dragged = dragged;
            this.run = run;
        }
    }

    /** As a tree a run takes some hundred kilobytes, twenty times this. */
    private byte[] packed(JsonNode run) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        Deflater quick = new Deflater(Deflater.BEST_SPEED);
        try (OutputStream out = new DeflaterOutputStream(bytes, quick)) {
            mapper.writeValue(out, run);
        } catch (IOException inMemory) {
            throw new UncheckedIOException(inMemory);
        } finally {
            quick.end();
        }
        return bytes.toByteArray();
    }

    private JsonNode unpacked(byte[] run) {
        try (InputStream in = new InflaterInputStream(new ByteArrayInputStream(run))) {
            return mapper.readTree(in);
        } catch (IOException inMemory) {
            throw new UncheckedIOException(inMemory);
        }
    }
}
