package loftcoil.runner.show;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Small pieces of well-formed HTML. What is named text is escaped here; what is named inside is HTML already. */
public final class Html {

    /** A box to tick with a pen. */
    public static final String TICK = "<span class=\"tick\">\u00a0</span>";

    private static final int LINES_A_RUN = 16;
    private static final double LETTERS_A_LINE = 66;
    private static final String NOTE = "<span class=\"note\">";
    private static final double NOTE_SIZE = 8.0 / 9;

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

    /**
     * A list in two columns where there is room for them. It is cut into short runs, each to be read down the left and then down the
     * right, so that a page ends between two of them.
     */
    public static String two(String kind, List<String> insides) {
        StringBuilder out = new StringBuilder();
        int from = 0;
        while (from < insides.size()) {
            int to = from;
            int lines = 0;
            while (to < insides.size() && (to == from || lines + lines(insides.get(to)) <= LINES_A_RUN)) {
                lines += lines(insides.get(to));
                to++;
            }
            if (to == insides.size() - 1 && to - from > 2) {
                // The last of them would stand alone on the next page.
                to--;
                lines -= lines(insides.get(to));
            }
            out.append(run(kind, insides.subList(from, to), lines));
            from = to;
        }
        return out.toString();
    }

    /** As many to the left as make the taller of both columns least tall. */
    private static String run(String kind, List<String> insides, int lines) {
        if (insides.size() == 1) {
            return element("ul", kind, element("li", insides.get(0)));
        }
        int left = 1;
        int best = Integer.MAX_VALUE;
        int tall = 0;
        for (int i = 1; i < insides.size(); i++) {
            tall += lines(insides.get(i - 1));
            int taller = Math.max(tall, lines - tall);
            // Of two alike the longer left column: it is read first.
            if (taller <= best) {
                best = taller;
                left = i;
            }
        }
        return element(
                "div", "two", half(kind, insides.subList(0, left)) + half(kind, insides.subList(left, insides.size())));
    }

    private static String half(String kind, List<String> insides) {
        return insides.isEmpty()
                ? ""
                : element(
                        "ul",
                        kind,
                        insides.stream().map(inside -> element("li", inside)).collect(Collectors.joining()));
    }

    /** About how many lines it takes in one of two columns. */
    private static int lines(String inside) {
        int all = inside.replaceAll("<[^>]*>", "").length();
        int noted = inside.contains(NOTE)
                ? inside.substring(inside.indexOf(NOTE))
                        .replaceAll("<[^>]*>", "")
                        .length()
                : 0;
        return 1 + (int) ((all - noted + NOTE_SIZE * noted) / LETTERS_A_LINE);
    }

    /** The same with a number before each item, by which it is named elsewhere. */
    public static String numbered(String kind, List<String> insides) {
        List<String> items = new ArrayList<>();
        for (String inside : insides) {
            items.add(element("strong", Integer.toString(items.size() + 1)).strip() + " " + inside);
        }
        return two(kind, items);
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
