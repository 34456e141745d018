package loftcoil.runner.handout;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.commonmark.Extension;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.Image;
import org.commonmark.node.Link;
import org.commonmark.node.Node;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.NodeRenderer;
import org.commonmark.renderer.html.HtmlNodeRendererContext;
import org.commonmark.renderer.html.HtmlRenderer;

/**
 * CommonMark to HTML for paper. A link is its words alone, since paper has nowhere to lead; a drawing of the lessons is drawn in
 * its place.
 */
final class Prose {

    private static final List<Extension> EXTENSIONS = List.of(TablesExtension.create());
    private static final Parser PARSER = Parser.builder().extensions(EXTENSIONS).build();
    private static final HtmlRenderer RENDERER = HtmlRenderer.builder()
            .extensions(EXTENSIONS)
            .escapeHtml(true)
            .nodeRendererFactory(OnPaper::new)
            .build();

    private Prose() {}

    /** Paragraphs, lists and tables. */
    static String blocks(String markdown) {
        return RENDERER.render(PARSER.parse(markdown));
    }

    /** The same, each paragraph, list, table and heading by itself. */
    static List<String> pieces(String markdown) {
        List<String> pieces = new ArrayList<>();
        for (Node node = PARSER.parse(markdown).getFirstChild(); node != null; node = node.getNext()) {
            pieces.add(RENDERER.render(node));
        }
        return pieces;
    }

    /** One line of text, without a paragraph around it. */
    static String inline(String markdown) {
        String html = blocks(markdown).strip();
        return html.matches("(?s)<p>(?:(?!<p>).)*</p>") ? html.substring(3, html.length() - 4) : html;
    }

    private record OnPaper(HtmlNodeRendererContext context) implements NodeRenderer {

        @Override
        public Set<Class<? extends Node>> getNodeTypes() {
            return Set.of(Link.class, Image.class);
        }

        @Override
        public void render(Node node) {
            if (node instanceof Image image) {
                context.getWriter().raw(LessonDrawing.svg(image));
                return;
            }
            for (Node child = node.getFirstChild(); child != null; child = child.getNext()) {
                context.render(child);
            }
        }
    }
}
