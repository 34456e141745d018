package loftcoil.engine.pipe;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A table among the resources of a room: comment lines that start with {@code #}, one of them {@code # source}, then a
 * line of column names, then rows. Columns are parted by commas; the last one may hold commas itself.
 */
public record ResourceTable(String name, List<Map<String, String>> rows) {

    /** Keeps a copy of the rows. */
    public ResourceTable {
        rows = List.copyOf(rows);
    }

    /**
     * Reads a table that stands beside a class.
     *
     * @param beside any class of the room the table belongs to
     * @param name file name of the table
     * @throws IllegalStateException where the resource is missing, names no source, has no rows or a row lacks columns: a
     *     fault of the build, never of a user
     */
    public static ResourceTable read(Class<?> beside, String name) {
        return parse(name, text(beside, name));
    }

    static ResourceTable read(String name) {
        return read(ResourceTable.class, name);
    }

    static ResourceTable parse(String name, String text) {
        if (text.lines().noneMatch(line -> line.startsWith("# source"))) {
            throw new IllegalStateException(name + ": the header names no '# source'");
        }
        List<String> lines = text.lines()
                .filter(line -> !line.isBlank() && !line.startsWith("#"))
                .toList();
        if (lines.size() < 2) {
            throw new IllegalStateException(name + ": no rows");
        }
        List<String> columns = List.of(lines.get(0).split(",", -1));
        List<Map<String, String>> rows = new ArrayList<>();
        for (String line : lines.subList(1, lines.size())) {
            rows.add(row(name, columns, line));
        }
        return new ResourceTable(name, rows);
    }

    private static Map<String, String> row(String name, List<String> columns, String line) {
        String[] cells = line.split(",", columns.size());
        if (cells.length != columns.size()) {
            throw new IllegalStateException(name + ": " + columns.size() + " columns expected in: " + line);
        }
        Map<String, String> row = new LinkedHashMap<>();
        for (int i = 0; i < cells.length; i++) {
            row.put(columns.get(i).strip(), cells[i].strip());
        }
        return row;
    }

    private static String text(Class<?> beside, String name) {
        try (InputStream in = beside.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException(name + ": resource missing");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(name, e);
        }
    }
}
