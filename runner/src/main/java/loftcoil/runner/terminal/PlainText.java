package loftcoil.runner.terminal;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.commonmark.Extension;
import org.commonmark.ext.gfm.tables.TableBlock;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.FencedCodeBlock;
import org.commonmark.node.Heading;
import org.commonmark.node.IndentedCodeBlock;
import org.commonmark.node.Node;
import org.commonmark.node.SoftLineBreak;
import org.commonmark.node.Text;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.text.LineBreakRendering;
import org.commonmark.renderer.text.TextContentRenderer;

/** Markdown as plain text for a terminal. */
final class PlainText {

    private static final List<Extension> EXTENSIONS = List.of(TablesExtension.create());
    private static final Parser PARSER = Parser.builder().extensions(EXTENSIONS).build();
    private static final TextContentRenderer RENDERER = TextContentRenderer.builder()
            .extensions(EXTENSIONS)
            .lineBreakRendering(LineBreakRendering.SEPARATE_BLOCKS)
            .build();

    private PlainText() {}

    /**
     * Renders markdown as text, wrapped.
     *
     * @param markdown the source
     * @param width greatest line length, in characters
     */
    static String of(String markdown, int width) {
        Node document = PARSER.parse(markdown);
        document.accept(new JoinedLines());
        StringBuilder text = new StringBuilder();
        for (Node block = document.getFirstChild(); block != null; block = block.getNext()) {
            text.append(text.isEmpty() ? "" : "\n\n").append(block(block, width));
        }
        return text.toString();
    }

    /** A line end within a paragraph is only how its source was typed. */
    private static final class JoinedLines extends AbstractVisitor {
        @Override
        public void visit(SoftLineBreak lineEnd) {
            lineEnd.insertAfter(new Text(" "));
            lineEnd.unlink();
        }
    }

    private static String table(TableBlock table, int width) {
        List<List<String>> rows = new ArrayList<>();
        for (Node part : children(table)) {
            for (Node row : children(part)) {
                rows.add(children(row).stream()
                        .map(cell ->
                                children(cell).stream().map(RENDERER::render).collect(Collectors.joining()))
                        .toList());
            }
        }
        return String.join("\n", TextTable.lines(rows.get(0), rows.subList(1, rows.size()), width));
    }

    private static List<Node> children(Node parent) {
        List<Node> children = new ArrayList<>();
        for (Node child = parent.getFirstChild(); child != null; child = child.getNext()) {
            children.add(child);
        }
        return children;
    }

    private static String block(Node block, int width) {
        String text = RENDERER.render(block).stripTrailing();
        if (block instanceof FencedCodeBlock || block instanceof IndentedCodeBlock) {
            return text.lines().map(line -> "    " + line).collect(Collectors.joining("\n"));
        }
        if (block instanceof TableBlock table) {
            return table(table, width);
        }
        if (block instanceof Heading heading) {
            return text + "\n" + (heading.getLevel() == 1 ? "=" : "-").repeat(Math.min(width, text.length()));
        }
        return text.lines()
                .flatMap(line -> line.isBlank() ? List.of("").stream() : Wrap.lines(line, width).stream())
                .collect(Collectors.joining("\n"));
    }
}
