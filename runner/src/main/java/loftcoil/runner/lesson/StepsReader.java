package loftcoil.runner.lesson;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.commonmark.ext.front.matter.YamlFrontMatterBlock;
import org.commonmark.node.BlockQuote;
import org.commonmark.node.FencedCodeBlock;
import org.commonmark.node.Heading;
import org.commonmark.node.Node;

/**
 * Cuts the blocks of a lesson into steps. Snippets and questions bring their own names. Names made here hold an
 * underscore, which those cannot, so the two never meet.
 */
final class StepsReader {
    private static final Pattern QUOTED = Pattern.compile("^ {0,3}> ?");
    private static final Pattern WORD = Pattern.compile(
            "^\\s*(?:\\*\\*|__)(Caution|Danger)[.:!]?(?:\\*\\*|__)[.:!]?\\s*", Pattern.CASE_INSENSITIVE);

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
        Optional<Step.Question> question = LoneParagraphs.question(source, block);
        if (question.isPresent()) {
            claim(question.get().id(), question.get().line(), "question");
            return question;
        }
        Optional<Step.Caution> caution = caution(block);
        if (caution.isPresent()) {
            return caution;
        }
        return LoneParagraphs.drawing(block)
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

    /** The warning in that block, if it is one: a block quote that begins with a bold “Caution.” or “Danger.”. */
    private Optional<Step.Caution> caution(Node block) {
        if (!(block instanceof BlockQuote)) {
            return Optional.empty();
        }
        int first = SourceText.firstLine(block);
        String inside = source.between(first, SourceText.lastLine(block))
                .lines()
                .map(line -> QUOTED.matcher(line).replaceFirst(""))
                .collect(Collectors.joining("\n"));
        Matcher word = WORD.matcher(inside);
        if (!word.find()) {
            return Optional.empty();
        }
        String text = inside.substring(word.end()).strip();
        if (text.isEmpty()) {
            source.fault(block, "a warning without words", "what can happen, and what to do instead");
        }
        return Optional.of(new Step.Caution(
                fresh("caution_" + LessonNames.slug(text)), first, word.group(1).equalsIgnoreCase("danger"), text));
    }
}
