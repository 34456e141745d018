package loftcoil.runner.lesson;

import java.util.Optional;
import org.commonmark.node.Image;
import org.commonmark.node.Node;
import org.commonmark.node.Paragraph;

/** Finds the places where the learner's own loop is drawn. */
final class Drawings {

    static final String YOUR_LOOP = "drawings/your-loop.svg";
    private static final String ALLOWED =
            "a paragraph that is only ![what it shows](" + YOUR_LOOP + "), the learner's own loop";

    private Drawings() {}

    /** The drawing in that block, if it is one; its name is left empty. */
    static Optional<Step.Drawing> read(Node block) {
        return block instanceof Paragraph
                ? Nodes.onlyChild(block)
                        .filter(Image.class::isInstance)
                        .map(Image.class::cast)
                        .filter(image -> image.getDestination().equals(YOUR_LOOP))
                        .map(image -> new Step.Drawing("", SourceText.firstLine(block), Nodes.words(image)))
                : Optional.empty();
    }

    /** Faults an image that is no known drawing, stands inside other text, or says nothing to those who cannot see it. */
    static void check(SourceText source, Image image) {
        Node parent = image.getParent();
        if (!image.getDestination().equals(YOUR_LOOP)) {
            source.fault(image, "image " + LessonNames.quoted(image.getDestination()), ALLOWED);
        } else if (parent == null || read(parent).isEmpty()) {
            source.fault(image, "an image inside other text", ALLOWED);
        } else if (Nodes.words(image).isEmpty()) {
            source.fault(image, "an image without words", ALLOWED);
        }
    }
}
