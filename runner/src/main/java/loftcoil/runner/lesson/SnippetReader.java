package loftcoil.runner.lesson;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.commonmark.node.FencedCodeBlock;
import org.jspecify.annotations.Nullable;

/** Makes a snippet of a fence whose first word is {@code java}. */
final class SnippetReader {

    static final Pattern NAME = Pattern.compile("[a-z0-9]+(-[a-z0-9]+)*");
    private static final List<String> KEYS =
            List.of("name", "drag", "from", "to", "by", "start", "decided", "within", "unit", "label");
    private static final String PAIRS = "key=value pairs with blanks between; a value with blanks in \"double quotes\"";
    private static final Pattern PAIR = Pattern.compile("([A-Za-z]+)=(?:\"([^\"]*)\"|([^\\s\"]+))(?=\\s|$)");

    private SnippetReader() {}

    static boolean isJava(FencedCodeBlock fence) {
        return fence.getInfo() != null
                && fence.getInfo().strip().split("\\s+", 2)[0].equalsIgnoreCase("java");
    }

    /** The snippet; one without a good name gets an empty one, and a fault. */
    static Step.Snippet read(SourceText source, FencedCodeBlock fence) {
        int line = SourceText.firstLine(fence);
        String[] info = fence.getInfo().strip().split("\\s+", 2);
        Map<String, String> words = pairs(source, line, info.length > 1 ? info[1] : "");
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

    /** The pairs in the order they stand; whatever is no pair, or stands twice, becomes a fault at that line. */
    private static Map<String, String> pairs(SourceText source, int line, String words) {
        Map<String, String> pairs = new LinkedHashMap<>();
        Matcher pair = PAIR.matcher(words);
        int at = 0;
        while (pair.find()) {
            stray(source, line, words.substring(at, pair.start()));
            String value = pair.group(2) != null ? pair.group(2) : pair.group(3);
            if (pairs.putIfAbsent(pair.group(1), value) != null) {
                source.fault(line, 1, LessonNames.quoted(pair.group(1)) + " stands there twice", "each key once");
            }
            at = pair.end();
        }
        stray(source, line, words.substring(at));
        return pairs;
    }

    private static void stray(SourceText source, int line, String between) {
        if (!between.isBlank()) {
            source.fault(line, 1, "cannot read " + LessonNames.quoted(between), PAIRS);
        }
    }
}
