package loftcoil.runner.show;

import java.util.List;
import java.util.stream.Collectors;

/** Small pieces of well-formed HTML. What is named text is escaped here; what is named inside is HTML already. */
public final class Html {

    /** A box to tick with a pen. */
    public static final String TICK = "<span class=\"tick\">\u00a0</span>";

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
        StringBuilder table = new StringBuilder("<div class=\"wide\" tabindex=\"0\" role=\"region\" aria-label=\""
                + text(name) + "\"><table class=\"" + text(kind) + "\">\n" + caption + "<thead><tr>");
        headings.forEach(heading -> cell(table, "th scope=\"col\"", heading));
        table.append("</tr></thead>\n<tbody>\n");
        for (List<String> row : rows) {
            table.append("<tr>");
            for (int i = 0; i < row.size(); i++) {
                cell(table, i == 0 ? first : "td", row.get(i).isEmpty() ? "\u00a0" : row.get(i));
            }
            table.append("</tr>\n");
        }
        return table.append("</tbody></table></div>\n").toString();
    }

    private static void cell(StringBuilder table, String opened, String inside) {
        table.append('<').append(opened).append('>').append(inside);
        table.append("</").append(opened, 0, 2).append('>');
    }
}
