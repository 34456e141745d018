package loftcoil.runner.handout;

import java.util.List;
import loftcoil.runner.show.Html;

/**
 * A piece of a lesson on paper that stands in one column, whole.
 *
 * @param html what it is
 * @param heads true where it must not stand alone at the foot of a column: a heading
 */
record Block(String html, boolean heads) {

    /** A piece that may end a column. */
    static Block of(String html) {
        return new Block(html, false);
    }

    /** Paragraphs, lists, tables and headings, a block each. */
    static List<Block> prose(String markdown) {
        return Prose.pieces(markdown).stream()
                .map(html -> new Block(html, html.matches("(?s)<h[1-3][ >].*")))
                .toList();
    }

    /** The same piece in a box of a class. */
    Block within(String boxClass) {
        return new Block(Html.element("div", boxClass, html), heads);
    }
}
