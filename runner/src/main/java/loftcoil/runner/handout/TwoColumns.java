package loftcoil.runner.handout;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import loftcoil.runner.show.Html;

/**
 * Sets blocks in two columns, page by page, for the PDF. The writer lays all of them out once in one long column, so that each
 * block's height is known; then they are dealt out whole. Nothing is ever split, and nothing stands on anything else.
 */
final class TwoColumns {

    static final double GAP_MM = 5;
    private static final double MARGINS_ACROSS_MM = 28;
    private static final double MARGINS_UP_MM = 30;

    /** For what rounding of each block adds up to. */
    private static final double SLACK_MM = 2;

    private final Frame frame;
    private final double columnMm;
    private final double heightMm;

    /** On the paper of a frame. */
    TwoColumns(Frame frame) {
        this.frame = frame;
        this.columnMm = (frame.paper().widthMm() - MARGINS_ACROSS_MM - GAP_MM) / 2;
        this.heightMm = frame.paper().heightMm() - MARGINS_UP_MM - SLACK_MM;
    }

    /**
     * The body of the pages.
     *
     * @param top what stands above both columns of the first page
     * @param blocks in reading order
     * @return empty where a block is taller than a column
     */
    Optional<String> body(String top, List<Block> blocks) {
        double topMm = HandoutPdf.heightsMm(frame.forPdf(measured(wrapped(top), 2 * columnMm + GAP_MM)))
                .get(0);
        StringBuilder all = new StringBuilder();
        blocks.forEach(block -> all.append(wrapped(block.html())));
        List<Double> heights = HandoutPdf.heightsMm(frame.forPdf(measured(all.toString(), columnMm)));
        List<Unit> units = units(blocks, heights);
        if (units.stream().anyMatch(unit -> unit.heightMm() > heightMm)) {
            return Optional.empty();
        }
        return Optional.of(top + leaves(units, topMm));
    }

    /** What stays together in a column. */
    private record Unit(String html, double heightMm) {}

    private static List<Unit> units(List<Block> blocks, List<Double> heights) {
        List<Unit> units = new ArrayList<>();
        StringBuilder html = new StringBuilder();
        double height = 0;
        for (int i = 0; i < blocks.size(); i++) {
            html.append(wrapped(blocks.get(i).html()));
            height += heights.get(i);
            if (!blocks.get(i).heads() || i == blocks.size() - 1) {
                units.add(new Unit(html.toString(), height));
                html.setLength(0);
                height = 0;
            }
        }
        return units;
    }

    private String leaves(List<Unit> units, double topMm) {
        StringBuilder out = new StringBuilder();
        int at = 0;
        boolean first = true;
        while (at < units.size()) {
            double room = first ? heightMm - topMm : heightMm;
            int middle = filled(units, at, room);
            int end = filled(units, middle, room);
            if (end == units.size()) {
                middle = balanced(units, at, end);
            }
            if (end == at) {
                // Not even one fits below the top: it begins on the next page.
                first = false;
                continue;
            }
            out.append(leaf(units.subList(at, middle), units.subList(middle, end), at > 0));
            at = end;
            first = false;
        }
        return out.toString();
    }

    /** Index after the last unit that fits. */
    private static int filled(List<Unit> units, int from, double roomMm) {
        double height = 0;
        int at = from;
        while (at < units.size() && height + units.get(at).heightMm() <= roomMm) {
            height += units.get(at).heightMm();
            at++;
        }
        return at;
    }

    /** Where the last page is parted so that its columns end as level as can be. */
    private static int balanced(List<Unit> units, int from, int to) {
        int best = to;
        double least = Double.MAX_VALUE;
        for (int middle = from; middle <= to; middle++) {
            double height = Math.max(heightMm(units.subList(from, middle)), heightMm(units.subList(middle, to)));
            if (height < least) {
                least = height;
                best = middle;
            }
        }
        return best;
    }

    private static double heightMm(List<Unit> units) {
        return units.stream().mapToDouble(Unit::heightMm).sum();
    }

    private String leaf(List<Unit> left, List<Unit> right, boolean later) {
        double height = Math.max(heightMm(left), heightMm(right));
        return "<div class=\"leaf" + (later ? " later" : "") + "\" style=\"height: " + mm(height) + "\">\n"
                + column(html(left), 0) + column(html(right), columnMm + GAP_MM) + "</div>\n";
    }

    private static String html(List<Unit> units) {
        StringBuilder out = new StringBuilder();
        units.forEach(unit -> out.append(unit.html()));
        return out.toString();
    }

    private static String measured(String html, double widthMm) {
        return "<div style=\"width: " + mm(widthMm) + "\">" + html + "</div>\n";
    }

    private String column(String html, double leftMm) {
        return "<div class=\"column\" style=\"width: " + mm(columnMm) + "; left: " + mm(leftMm) + "\">\n" + html
                + "</div>\n";
    }

    private static String wrapped(String html) {
        return Html.element("div", "block", html);
    }

    private static String mm(double value) {
        return String.format(Locale.ROOT, "%.2fmm", value);
    }
}
