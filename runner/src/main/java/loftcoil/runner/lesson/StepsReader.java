package loftcoil.runner.lesson;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.commonmark.ext.front.matter.YamlFrontMatterBlock;
import org.commonmark.node.FencedCodeBlock;
import org.commonmark.node.Heading;
import org.commonmark.node.Node;

/**
 * Cuts the blocks of a lesson into steps. Snippets and questions bring their own names. Names made here hold an
 * underscore, which those cannot, so the two never meet.
 */
final class StepsReader {

    private final SourceText source;
    private final List<Step> steps = new ArrayList<>();
    private final Set<String> names = new HashSet<>();
    private int proseFrom;
    private int proseTo;
    private String proseName = "";

    StepsReader(SourceText source) {
        this.source = source;
    }

    List<Step> read(Node document) {
        Node block = document.getFirstChild();
        while (block != null) {
            if (!(block instanceof YamlFrontMatterBlock)) {
                take(block);
            }
            block = block.getNext();
        }
        endProse();
        return steps;
    }

    private void take(Node block) {
        Optional<? extends Step> step = stepIn(block);
        if (step.isPresent()) {
            endProse();
            steps.add(step.get());
            return;
        }
        boolean section = block instanceof Heading heading && heading.getLevel() <= 2;
        if (section) {
            endProse();
        }
        if (proseFrom == 0) {
            proseFrom = SourceText.firstLine(block);
            proseName = section ? "text_" + LessonNames.slug(Nodes.words(block)) : "after_" + lastName();
        }
        proseTo = SourceText.lastLine(block);
    }

    private Optional<? extends Step> stepIn(Node block) {
        if (block instanceof FencedCodeBlock fence && SnippetReader.isJava(fence)) {
            Step.Snippet snippet = SnippetReader.read(source, fence);
            claim(snippet.id(), snippet.line() - 1, "snippet");
            return Optional.of(snippet);
        }
        Optional<Step.Question> question = Questions.read(source, block);
        if (question.isPresent()) {
            claim(question.get().id(), question.get().line(), "question");
            return question;
        }
        Optional<Step.Caution> caution = Cautions.read(source, block);
        if (caution.isPresent()) {
            return caution.map(c -> new Step.Caution(
                    fresh("caution_" + LessonNames.slug(c.markdown())), c.line(), c.danger(), c.markdown()));
        }
        return Drawings.read(block)
                .map(d -> new Step.Drawing(fresh("drawing_" + LessonNames.slug(d.caption())), d.line(), d.caption()));
    }

    private void endProse() {
        if (proseFrom > 0) {
            steps.add(new Step.Prose(fresh(proseName), proseFrom, source.between(proseFrom, proseTo)));
            proseFrom = 0;
        }
    }

    private String lastName() {
        return steps.isEmpty() ? "start" : steps.get(steps.size() - 1).id();
    }

    private void claim(String name, int line, String what) {
        if (!name.isEmpty() && !names.add(name)) {
            source.fault(
                    line,
                    1,
                    "a second step named " + LessonNames.quoted(name),
                    "a name of its own for each snippet and each question of a lesson; this is a " + what);
        }
    }

    private String fresh(String wanted) {
        String name = wanted;
        for (int i = 2; !names.add(name); i++) {
            name = wanted + "_" + i;
        }
        return name;
    }
}
