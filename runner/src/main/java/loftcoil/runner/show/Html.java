package loftcoil.runner.show;

import java.util.List;
import java.util.stream.Collectors;

/** Small pieces of well-formed HTML. What is named text is escaped here; what is named inside is HTML already. */
public final class Html {

    /** A box to tick with a pen. */
    public static final String TICK = "<span class=\"tick\">\u00a0</span>";

    private static final String HEADING = "th scope=\"col\"";

    /** A table of no more rows stands whole on paper. */
    private static final int SHORT_ROWS = 12;

    private Html() {}

    /** Text as HTML. */
    public static String text(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;")
                // What XML cannot hold would make the whole sheet unreadable.
                .replaceAll("[\\x00-\\x08\\x0b\\x0c\\x0e-\\x1f\\ufffe\\uffff]", "\ufffd");
    }

    /** An element. */
    public static String element(String name, String inside) {
        return "<" + name + ">" + inside + "</" + name + ">\n";
    }

    /** An element of that class. */
    public static String element(String name, String kind, String inside) {
        return "<" + name + " class=\"" + text(kind) + "\">" + inside + "</" + name + ">\n";
    }

    /** A part of a sheet with its heading, to be reached by its name. */
    public static String section(String id, String heading, String inside) {
        return "<section id=\"" + text(id) + "\">\n<h2>" + text(heading) + "</h2>\n" + inside + "</section>\n";
    }

    /** A list of items. */
    public static String list(List<String> insides) {
        return "<ul>\n" + insides.stream().map(inside -> element("li", inside)).collect(Collectors.joining())
                + "</ul>\n";
    }

    /**
     * A table in a frame that scrolls by itself; its head is printed again on each page.
     *
     * @param kind class of the table
     * @param headings HTML of the headings
     * @param rows HTML of the cells, as many in each row as there are headings
     */
    public static String table(String kind, List<String> headings, List<List<String>> rows) {
        return framed("Table", kind, "", headings, rows, "td");
    }

    /** A table of tall rows: on paper its head stands together with its first row, and is not printed again on a further page. */
    public static String tall(String kind, List<String> headings, List<List<String>> rows) {
        return wide(
                "Table",
                "<table class=\"" + text(kind) + "\">\n<tbody class=\"together\">" + row(headings, HEADING, HEADING)
                        + row(rows.get(0), "td", "td") + "</tbody>\n<tbody>"
                        + rows.stream()
                                .skip(1)
                                .map(cells -> row(cells, "td", "td"))
                                .collect(Collectors.joining())
                        + "</tbody></table>");
    }

    /**
     * A table with a caption, in which the first cell of each row names the row.
     *
     * @param caption what it is
     * @param headings HTML of the headings
     * @param rows HTML of the cells, as many in each row as there are headings
     */
    public static String captioned(String caption, List<String> headings, List<List<String>> rows) {
        return framed(caption, "captioned", element("caption", text(caption)), headings, rows, "th scope=\"row\"");
    }

    private static String framed(
            String name, String kind, String caption, List<String> headings, List<List<String>> rows, String first) {
        String length = rows.size() <= SHORT_ROWS ? " short" : "";
        return wide(
                name,
                "<table class=\"" + text(kind) + length + "\">\n" + caption + "<thead>"
                        + row(headings, HEADING, HEADING) + "</thead>\n<tbody>\n"
                        + rows.stream().map(cells -> row(cells, first, "td")).collect(Collectors.joining())
                        + "</tbody></table>");
    }

    /** A frame that scrolls by itself. */
    private static String wide(String name, String table) {
        return "<div class=\"wide\" tabindex=\"0\" role=\"region\" aria-label=\"" + text(name) + "\">" + table
                + "</div>\n";
    }

    private static String row(List<String> cells, String first, String others) {
        StringBuilder row = new StringBuilder("<tr>");
        for (int i = 0; i < cells.size(); i++) {
            String opened = i == 0 ? first : others;
            row.append('<').append(opened).append('>');
            row.append(cells.get(i).isEmpty() ? "\u00a0" : cells.get(i));
            row.append("</").append(opened, 0, 2).append('>');
        }
        return row.append("</tr>\n").toString();
    }
}
