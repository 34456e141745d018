package loftcoil.runner.chart;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.json.JsonMapper;

/** Charts as one line of JSON, for the way between two Java machines. Gaps are written as {@code "NaN"}. */
public final class ChartJson {

    private static final JsonMapper MAPPER = JsonMapper.builder().build();

    private ChartJson() {}

    /** The chart on one line. */
    public static String write(ChartOrder order) {
        try {
            return MAPPER.writeValueAsString(order);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a chart of plain numbers and text can always be written", e);
        }
    }

    /**
     * The chart a line was written from.
     *
     * @throws IllegalArgumentException where it is no such line
     */
    public static ChartOrder read(String line) {
        try {
            return MAPPER.readValue(line, ChartOrder.class);
        } catch (JsonProcessingException e) {
            throw new IllegalArgumentException("not a chart: " + e.getOriginalMessage(), e);
        }
    }
}
