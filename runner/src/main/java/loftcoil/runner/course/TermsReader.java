package loftcoil.runner.course;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.Link;
import org.commonmark.node.Node;
import org.commonmark.node.Paragraph;
import org.commonmark.node.StrongEmphasis;
import org.commonmark.node.Text;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.markdown.MarkdownRenderer;
import org.commonmark.renderer.text.TextContentRenderer;

/**
 * Reads the glossary: paragraphs that begin with the word in bold and a colon, and end with a link to the lesson it first
 * stands in. Any other paragraph is an introduction and passed over.
 */
final class TermsReader {

    private static final Parser PARSER = Parser.builder().build();
    private static final TextContentRenderer PLAIN =
            TextContentRenderer.builder().build();
    private static final MarkdownRenderer MARKDOWN = MarkdownRenderer.builder().build();
    private static final Pattern LESSON = Pattern.compile("(\\d\\d-[a-z0-9-]+)\\.md");

    private TermsReader() {}

    /** The terms in the order of the text. */
    static List<Term> read(String text) {
        List<Term> terms = new ArrayList<>();
        PARSER.parse(text).accept(new AbstractVisitor() {
            @Override
            public void visit(Paragraph paragraph) {
                term(paragraph).ifPresent(terms::add);
            }
        });
        return terms;
    }

    private static Optional<Term> term(Paragraph paragraph) {
        if (!(paragraph.getFirstChild() instanceof StrongEmphasis bold)
                || !(bold.getNext() instanceof Text after)
                || !after.getLiteral().startsWith(":")) {
            return Optional.empty();
        }
        String name = PLAIN.render(bold).strip();
        after.setLiteral(after.getLiteral().substring(1).stripLeading());
        bold.unlink();
        String lesson = lesson(paragraph.getLastChild());
        return Optional.of(new Term(name, MARKDOWN.render(paragraph).strip(), lesson));
    }

    /** Takes the closing link away, so that the meaning stands alone. */
    private static String lesson(Node last) {
        if (!(last instanceof Link link)) {
            return "";
        }
        var file = LESSON.matcher(link.getDestination());
        if (!file.matches()) {
            return "";
        }
        link.unlink();
        return file.group(1);
    }
}
