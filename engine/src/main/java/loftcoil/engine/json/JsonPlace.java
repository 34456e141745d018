package loftcoil.engine.json;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import java.util.Optional;

/**
 * Where a text stops being JSON.
 *
 * @param line its line, from 1
 * @param column its column, from 1
 */
public record JsonPlace(int line, int column) {

    /** The place of a fault; empty where the reader knows none, as for a field it met after the text was read. */
    public static Optional<JsonPlace> of(JsonProcessingException fault) {
        JsonLocation at = fault.getLocation();
        return at == null || at.getLineNr() < 1
                ? Optional.empty()
                : Optional.of(new JsonPlace(at.getLineNr(), at.getColumnNr()));
    }

    /** The place in words, such as {@code line 3, column 14}. */
    public String words() {
        return "line " + line + ", column " + column;
    }
}
