package loftcoil.runner.lesson;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.commonmark.node.BlockQuote;
import org.commonmark.node.Node;

/** Finds the warnings of a lesson: block quotes that begin with a bold “Caution.” or “Danger.”. */
final class Cautions {

    private static final Pattern MARK = Pattern.compile("^ {0,3}> ?");
    private static final Pattern WORD = Pattern.compile(
            "^\\s*(?:\\*\\*|__)(Caution|Danger)[.:!]?(?:\\*\\*|__)[.:!]?\\s*", Pattern.CASE_INSENSITIVE);

    private Cautions() {}

    /** The warning in that block, if it is one; its name is left empty. */
    static Optional<Step.Caution> read(SourceText source, Node block) {
        if (!(block instanceof BlockQuote)) {
            return Optional.empty();
        }
        int first = SourceText.firstLine(block);
        String inside = source.between(first, SourceText.lastLine(block))
                .lines()
                .map(line -> MARK.matcher(line).replaceFirst(""))
                .collect(Collectors.joining("\n"));
        Matcher word = WORD.matcher(inside);
        if (!word.find()) {
            return Optional.empty();
        }
        String text = inside.substring(word.end()).strip();
        if (text.isEmpty()) {
            source.fault(block, "a warning without words", "what can happen, and what to do instead");
        }
        return Optional.of(new Step.Caution("", first, word.group(1).equalsIgnoreCase("danger"), text));
    }
}
