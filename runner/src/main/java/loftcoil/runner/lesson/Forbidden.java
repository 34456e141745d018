package loftcoil.runner.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.commonmark.node.Document;
import org.commonmark.node.FencedCodeBlock;
import org.commonmark.node.HtmlBlock;
import org.commonmark.node.HtmlInline;
import org.commonmark.node.Image;
import org.commonmark.node.Link;
import org.commonmark.node.LinkReferenceDefinition;
import org.commonmark.node.Node;

/** Looks through a lesson for what CommonMark allows and a lesson does not, and gathers its links on the way. */
final class Forbidden {

    private static final Pattern OUTSIDE = Pattern.compile("^(?:[A-Za-z][A-Za-z0-9+.-]*:|//|/|\\\\).*", Pattern.DOTALL);

    private final SourceText source;
    private final List<ParsedLesson.Link> links = new ArrayList<>();

    Forbidden(SourceText source) {
        this.source = source;
    }

    /** Faults what is not allowed anywhere below the document; the links that remain, to be checked against files. */
    List<ParsedLesson.Link> in(Node document) {
        Nodes.each(document, this::look);
        return links;
    }

    private void look(Node node) {
        if (node instanceof HtmlBlock || node instanceof HtmlInline) {
            source.fault(node, "raw HTML", "CommonMark only; a < in text is written \\<");
        } else if (node instanceof LinkReferenceDefinition) {
            source.fault(node, "a link defined apart from its text", "links written whole: [words](target)");
        } else if (node instanceof Image image) {
            LoneParagraphs.inText(source, image);
        } else if (node instanceof Link link) {
            link(link);
        } else if (node instanceof FencedCodeBlock fence) {
            fence(fence);
        }
    }

    private void link(Link link) {
        String target = link.getDestination();
        if (LoneParagraphs.toExercise(link)) {
            LoneParagraphs.inText(source, link);
        } else if (OUTSIDE.matcher(target).matches()) {
            source.fault(
                    link,
                    "link to the outside, " + LessonNames.quoted(target),
                    "links within the lessons folder; an address may be written as `code`");
        } else {
            links.add(new ParsedLesson.Link(SourceText.firstLine(link), SourceText.column(link), target));
        }
    }

    private void fence(FencedCodeBlock fence) {
        if (fence.getClosingFenceLength() == null) {
            String mark = fence.getFenceCharacter().repeat(fence.getOpeningFenceLength());
            source.fault(fence, "a fence that is never closed", "a line of " + mark + " after the last line of code");
        }
        if (SnippetReader.isJava(fence) && !(fence.getParent() instanceof Document)) {
            source.fault(fence, "a java snippet inside a list or a quotation", "snippets at the left margin");
        }
    }
}
