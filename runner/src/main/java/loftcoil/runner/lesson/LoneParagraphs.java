package loftcoil.runner.lesson;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.commonmark.node.Document;
import org.commonmark.node.Image;
import org.commonmark.node.Link;
import org.commonmark.node.Node;
import org.commonmark.node.Paragraph;

/**
 * Finds the paragraphs of a lesson that are nothing but one link or image: a link to an exercise is a question, an image of the
 * learner's own loop is drawn.
 */
final class LoneParagraphs {

    private static final String FOLDER = "../exercises/";
    private static final Pattern TARGET =
            Pattern.compile("\\.\\./exercises/(\\d\\d-[a-z0-9-]+/([a-z0-9]+(?:-[a-z0-9]+)*))\\.json");
    private static final Pattern LABEL = Pattern.compile("(Predict|Question|Decide|Again):\\s*(\\S.*)");
    private static final String QUESTION =
            "a paragraph that is only [Predict: …], [Question: …], [Decide: …] or [Again: …] with a link"
                    + " such as (../exercises/01-warm-water/two-legs.json)";

    private static final String YOUR_LOOP = "drawings/your-loop.svg";
    private static final String DRAWING =
            "a paragraph that is only ![what it shows](" + YOUR_LOOP + "), the learner's own loop";

    private LoneParagraphs() {}

    static boolean toExercise(Link link) {
        return link.getDestination().startsWith(FOLDER);
    }

    /** The question in that block, if it is one; a link to an exercise that is none becomes a fault. */
    static Optional<Step.Question> question(SourceText source, Node block) {
        Optional<Link> link = alone(block);
        if (link.isEmpty()) {
            return Optional.empty();
        }
        String words = Nodes.words(link.get());
        Matcher label = LABEL.matcher(words);
        Matcher target = TARGET.matcher(link.get().getDestination());
        if (!label.matches()) {
            source.fault(link.get(), "link to an exercise called " + LessonNames.quoted(words), QUESTION);
        } else if (!target.matches()) {
            source.fault(link.get(), "link to " + LessonNames.quoted(link.get().getDestination()), QUESTION);
        } else {
            Step.Asked asked = Step.Asked.valueOf(label.group(1).toUpperCase(Locale.ROOT));
            int line = SourceText.firstLine(block);
            return Optional.of(new Step.Question(target.group(2), line, asked, label.group(2), target.group(1)));
        }
        return Optional.empty();
    }

    /** The link to an exercise that fills the block, if it does. */
    static Optional<Link> alone(Node block) {
        return block instanceof Paragraph
                ? Nodes.onlyChild(block)
                        .filter(Link.class::isInstance)
                        .map(Link.class::cast)
                        .filter(LoneParagraphs::toExercise)
                : Optional.empty();
    }

    /** Faults links to exercises that stand inside other text, where they would be overlooked. */
    static void inText(SourceText source, Link link) {
        Node parent = link.getParent();
        boolean filled = parent != null && alone(parent).isPresent() && parent.getParent() instanceof Document;
        if (!filled) {
            source.fault(link, "link to an exercise inside other text", QUESTION);
        }
    }

    /** The drawing in that block, if it is one; its name is left empty. */
    static Optional<Step.Drawing> drawing(Node block) {
        return block instanceof Paragraph
                ? Nodes.onlyChild(block)
                        .filter(Image.class::isInstance)
                        .map(Image.class::cast)
                        .filter(image -> image.getDestination().equals(YOUR_LOOP))
                        .map(image -> new Step.Drawing("", SourceText.firstLine(block), Nodes.words(image)))
                : Optional.empty();
    }

    /** Faults an image that is no known drawing, stands inside other text, or says nothing to those who cannot see it. */
    static void inText(SourceText source, Image image) {
        Node parent = image.getParent();
        if (!image.getDestination().equals(YOUR_LOOP)) {
            source.fault(image, "image " + LessonNames.quoted(image.getDestination()), DRAWING);
        } else if (parent == null || drawing(parent).isEmpty()) {
            source.fault(image, "an image inside other text", DRAWING);
        } else if (Nodes.words(image).isEmpty()) {
            source.fault(image, "an image without words", DRAWING);
        }
    }
}
