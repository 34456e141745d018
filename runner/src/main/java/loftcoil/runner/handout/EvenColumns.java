package loftcoil.runner.handout;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import loftcoil.runner.show.Html;

/**
 * A list in two columns where there is room for them. It is cut into runs, each to be read down the left and then down the right, so that a
 * page ends between two of them. The runs are cut where the columns end most level and a page is left least empty. How tall an item is
 * gets reckoned from its letters on the narrower paper.
 */
final class EvenColumns {

    /** Width of a column in widths of an m of the text, on A4. */
    private static final double COLUMN_EM = 29.6;

    private static final double NARROW_EM = 0.33;
    private static final double USUAL_EM = 0.56;
    private static final double CAPITAL_EM = 0.64;
    private static final double WIDE_EM = 0.84;
    private static final double BOLD = 1.11;
    private static final double NOTE = 8.0 / 8.7;
    private static final String NARROW = "ijlI'’,. /:;|-f()[]t!r\u00a0";
    private static final String WIDE = "mwMW@%—";
    private static final Pattern TAG = Pattern.compile("<[^>]*>");

    /** A run of so many lines that is moved to the next page leaves as many empty, once on a page of twice as many. */
    private static final double PAGE_LINES = 35;
    /** One item across both columns among others in two, lines; it looks odd, but better than a column that is as good as empty. */
    private static final double ALONE_LINES = 5;

    private EvenColumns() {}

    /**
     * The list.
     *
     * @param kind class of its lists
     * @param insides HTML of its items
     */
    static String of(String kind, List<String> insides) {
        if (insides.size() == 1) {
            return Html.element("ul", kind, Html.element("li", insides.get(0)));
        }
        List<Integer> lines = insides.stream().map(EvenColumns::lines).toList();
        StringBuilder out = new StringBuilder();
        int from = 0;
        for (int to : ends(lines)) {
            List<String> run = insides.subList(from, to);
            int left = left(lines.subList(from, to));
            out.append(
                    run.size() == 1
                            ? half(kind, run)
                            : Html.element(
                                    "div",
                                    "two",
                                    half(kind, run.subList(0, left)) + half(kind, run.subList(left, run.size()))));
            from = to;
        }
        return out.toString();
    }

    /** The same with a number before each item, by which it is named elsewhere. */
    static String numbered(String kind, List<String> insides) {
        List<String> items = new ArrayList<>();
        for (String inside : insides) {
            items.add(Html.element("strong", Integer.toString(items.size() + 1)).strip() + " " + inside);
        }
        return of(kind, items);
    }

    private static String half(String kind, List<String> insides) {
        return Html.element(
                "ul",
                kind,
                insides.stream().map(inside -> Html.element("li", inside)).collect(Collectors.joining()));
    }

    /** Where the runs end, so that all of them together leave least empty. */
    private static List<Integer> ends(List<Integer> lines) {
        int count = lines.size();
        double[] least = new double[count + 1];
        int[] end = new int[count];
        for (int from = count - 1; from >= 0; from--) {
            least[from] = Double.MAX_VALUE;
            for (int to = from + 1; to <= count; to++) {
                double empty = empty(lines.subList(from, to)) + least[to];
                if (empty < least[from]) {
                    least[from] = empty;
                    end[from] = to;
                }
            }
        }
        List<Integer> ends = new ArrayList<>();
        for (int at = 0; at < count; at = end[at]) {
            ends.add(end[at]);
        }
        return ends;
    }

    /** What a run leaves empty: below its shorter column, and at the foot of a page. */
    private static double empty(List<Integer> run) {
        int all = sum(run);
        if (run.size() == 1) {
            return ALONE_LINES;
        }
        int left = sum(run.subList(0, left(run)));
        int tall = Math.max(left, all - left);
        return 2.0 * tall - all + tall * tall / PAGE_LINES;
    }

    /** How many go to the left so that the taller of both columns is least tall; of two alike more, since it is read first. */
    private static int left(List<Integer> run) {
        int all = sum(run);
        int best = 1;
        for (int i = 1; i < run.size(); i++) {
            int before = sum(run.subList(0, best));
            int now = sum(run.subList(0, i));
            if (Math.max(now, all - now) <= Math.max(before, all - before)) {
                best = i;
            }
        }
        return best;
    }

    private static int sum(List<Integer> lines) {
        return lines.stream().mapToInt(Integer::intValue).sum();
    }

    /** How many lines an item takes in one of the columns. */
    static int lines(String inside) {
        int lines = 1;
        double at = 0;
        double word = 0;
        double size = 1;
        double bold = 1;
        Matcher tag = TAG.matcher(inside);
        int i = 0;
        while (i < inside.length()) {
            if (inside.charAt(i) == '<' && tag.find(i)) {
                boolean opens = inside.charAt(i + 1) != '/';
                if (tag.group().contains("strong")) {
                    bold = opens ? BOLD : 1;
                } else if (tag.group().contains("note")) {
                    size = NOTE;
                }
                i = tag.end();
                continue;
            }
            char letter = inside.charAt(i);
            double wide = em(letter) * size * bold;
            if (letter == ' ') {
                at += word + wide;
                word = 0;
            } else {
                word += wide;
                if (at + word > COLUMN_EM && at > 0) {
                    lines++;
                    at = 0;
                }
            }
            i++;
        }
        return lines;
    }

    private static double em(char letter) {
        if (NARROW.indexOf(letter) >= 0) {
            return NARROW_EM;
        }
        if (WIDE.indexOf(letter) >= 0) {
            return WIDE_EM;
        }
        return Character.isUpperCase(letter) ? CAPITAL_EM : USUAL_EM;
    }
}
