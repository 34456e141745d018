package loftcoil.runner.lesson;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.commonmark.node.FencedCodeBlock;
import org.jspecify.annotations.Nullable;

/** Makes a snippet of a fence whose first word is {@code java}. */
final class SnippetReader {

    static final Pattern NAME = Pattern.compile("[a-z0-9]+(-[a-z0-9]+)*");
    private static final List<String> KEYS =
            List.of("name", "drag", "from", "to", "by", "start", "decided", "unit", "label");

    private SnippetReader() {}

    static boolean isJava(FencedCodeBlock fence) {
        return fence.getInfo() != null
                && fence.getInfo().strip().split("\\s+", 2)[0].equalsIgnoreCase("java");
    }

    /** The snippet; one without a good name gets an empty one, and a fault. */
    static Step.Snippet read(SourceText source, FencedCodeBlock fence) {
        int line = SourceText.firstLine(fence);
        String[] info = fence.getInfo().strip().split("\\s+", 2);
        Map<String, String> words = FenceWords.read(source, line, info.length > 1 ? info[1] : "");
        words.keySet().stream()
                .filter(key -> !KEYS.contains(key))
                .forEach(key ->
                        source.fault(line, 1, "unknown key " + LessonNames.quoted(key), String.join(", ", KEYS)));
        String code = fence.getLiteral().stripTrailing();
        if (code.isBlank()) {
            source.fault(line, 1, "the snippet is empty", "at least one line of Java");
        }
        Optional<Drag> drag = new DragReader(source, line, words).read(code);
        return new Step.Snippet(name(source, line, words.get("name")), line + 1, code, drag);
    }

    private static String name(SourceText source, int line, @Nullable String name) {
        if (name == null) {
            source.fault(
                    line, 1, "a java snippet without a name", "name= with lower-case words, such as name=two-legs");
            return "";
        }
        if (!NAME.matcher(name).matches()) {
            source.fault(
                    line,
                    1,
                    "name=" + name,
                    "lower-case letters and digits with single hyphens between, such as two-legs");
            return "";
        }
        return name;
    }
}
