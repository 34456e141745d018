package loftcoil.runner.handout;

import java.util.List;
import java.util.stream.Collectors;

/** Small pieces of well-formed HTML. What is named text is escaped here; what is named inside is HTML already. */
final class Html {

    /** A box to tick with a pen. */
    static final String TICK = "<span class=\"tick\">\u00a0</span>";

    private Html() {}

    /** Text as HTML. */
    static String text(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;")
                // What XML cannot hold would make the whole sheet unreadable.
                .replaceAll("[\\x00-\\x08\\x0b\\x0c\\x0e-\\x1f\\ufffe\\uffff]", "\ufffd");
    }

    static String element(String name, String inside) {
        return "<" + name + ">" + inside + "</" + name + ">\n";
    }

    /** An element of that class. */
    static String element(String name, String kind, String inside) {
        return "<" + name + " class=\"" + text(kind) + "\">" + inside + "</" + name + ">\n";
    }

    /** A part of a sheet with its heading, to be reached by its name. */
    static String section(String id, String heading, String inside) {
        return "<section id=\"" + text(id) + "\">\n<h2>" + text(heading) + "</h2>\n" + inside + "</section>\n";
    }

    static String list(List<String> insides) {
        return "<ul>\n" + insides.stream().map(inside -> element("li", inside)).collect(Collectors.joining())
                + "</ul>\n";
    }

    /**
     * A table; its head is printed again on each page.
     *
     * @param kind class of the table
     * @param headings HTML of the headings
     * @param rows HTML of the cells, as many in each row as there are headings; the first cell names the row
     */
    static String table(String kind, List<String> headings, List<List<String>> rows) {
        StringBuilder table = new StringBuilder(
                "<div class=\"wide\" tabindex=\"0\" role=\"region\" aria-label=\"Table\"><table class=\"" + text(kind)
                        + "\">\n<thead><tr>");
        headings.forEach(
                heading -> table.append("<th scope=\"col\">").append(heading).append("</th>"));
        table.append("</tr></thead>\n<tbody>\n");
        for (List<String> row : rows) {
            table.append("<tr>");
            row.forEach(cell -> table.append("<td>")
                    .append(cell.isEmpty() ? "\u00a0" : cell)
                    .append("</td>"));
            table.append("</tr>\n");
        }
        return table.append("</tbody></table></div>\n").toString();
    }
}
