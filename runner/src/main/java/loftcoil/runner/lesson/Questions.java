package loftcoil.runner.lesson;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.commonmark.node.Document;
import org.commonmark.node.Link;
import org.commonmark.node.Node;
import org.commonmark.node.Paragraph;

/** Finds the questions of a lesson: paragraphs that are nothing but a link to an exercise. */
final class Questions {

    private static final String FOLDER = "../exercises/";
    private static final Pattern TARGET =
            Pattern.compile("\\.\\./exercises/(\\d\\d-[a-z0-9-]+/([a-z0-9]+(?:-[a-z0-9]+)*))\\.json");
    private static final Pattern LABEL = Pattern.compile("(Predict|Question|Decide):\\s*(\\S.*)");
    private static final String ALLOWED =
            "a paragraph that is only [Predict: …], [Question: …] or [Decide: …] with a link"
                    + " such as (../exercises/01-warm-water/two-legs.json)";

    private Questions() {}

    static boolean toExercise(Link link) {
        return link.getDestination().startsWith(FOLDER);
    }

    /** The question in that block, if it is one; a link to an exercise that is none becomes a fault. */
    static Optional<Step.Question> read(SourceText source, Node block) {
        Optional<Link> link = alone(block);
        if (link.isEmpty()) {
            return Optional.empty();
        }
        String words = Nodes.words(link.get());
        Matcher label = LABEL.matcher(words);
        Matcher target = TARGET.matcher(link.get().getDestination());
        if (!label.matches()) {
            source.fault(link.get(), "link to an exercise called " + LessonNames.quoted(words), ALLOWED);
        } else if (!target.matches()) {
            source.fault(link.get(), "link to " + LessonNames.quoted(link.get().getDestination()), ALLOWED);
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
                        .filter(Questions::toExercise)
                : Optional.empty();
    }

    /** Faults links to exercises that stand inside other text, where they would be overlooked. */
    static void inText(SourceText source, Link link) {
        Node parent = link.getParent();
        boolean filled = parent != null && alone(parent).isPresent() && parent.getParent() instanceof Document;
        if (!filled) {
            source.fault(link, "link to an exercise inside other text", ALLOWED);
        }
    }
}
