package loftcoil.runner.workshop;

import java.util.List;
import java.util.stream.Collectors;

/** Pieces of HTML; every text goes in escaped. */
final class Html {

    private Html() {}

    static String text(String plain) {
        return plain.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }

    static String element(String name, String plain) {
        return "<" + name + ">" + text(plain) + "</" + name + ">";
    }

    static String list(List<String> items) {
        return items.stream().map(item -> element("li", item)).collect(Collectors.joining("", "<ul>", "</ul>"));
    }

    /**
     * A table in a frame that scrolls by itself.
     *
     * @param caption what it is
     * @param head headings, as HTML, each a cell of its own
     * @param rows rows of cells, as HTML; the first of each heads its row
     */
    static String table(String caption, List<String> head, List<List<String>> rows) {
        StringBuilder out = new StringBuilder("<div class=\"frame\" tabindex=\"0\" role=\"region\" aria-label=\"")
                .append(text(caption))
                .append("\"><table>");
        out.append(element("caption", caption)).append("<thead><tr>");
        head.forEach(cell -> out.append("<th scope=\"col\">").append(cell).append("</th>"));
        out.append("</tr></thead><tbody>");
        for (List<String> row : rows) {
            out.append("<tr><th scope=\"row\">").append(row.get(0)).append("</th>");
            row.stream().skip(1).forEach(cell -> out.append("<td>").append(cell).append("</td>"));
            out.append("</tr>\n");
        }
        return out.append("</tbody></table></div>").toString();
    }
}
