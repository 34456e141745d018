package loftcoil.runner.chart;

import java.util.List;

/**
 * A drawn chart, and what it says for those who cannot see it.
 *
 * @param svg one self-contained SVG element without scripts, style sheets or style attributes; colours are presentation
 *     attributes beside classes that start with {@code lc-}, so that a page can restyle them
 * @param says the alternative text
 * @param columns headings of the table of its numbers
 * @param rows the numbers as text, at most about 15 rows
 */
public record ChartPicture(String svg, String says, List<String> columns, List<List<String>> rows) {

    /** Keeps its own copies. */
    public ChartPicture {
        columns = List.copyOf(columns);
        rows = rows.stream().map(List::copyOf).toList();
    }
}
