package loftcoil.runner.lesson;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads the {@code key=value} pairs behind the word {@code java} on a fence's opening line. */
final class FenceWords {

    private static final Pattern PAIR = Pattern.compile("([A-Za-z]+)=(?:\"([^\"]*)\"|([^\\s\"]+))(?=\\s|$)");
    private static final String ALLOWED =
            "key=value pairs with blanks between; a value with blanks in \"double quotes\"";

    private FenceWords() {}

    /** The pairs in the order they stand; whatever is no pair, or stands twice, becomes a fault at that line. */
    static Map<String, String> read(SourceText source, int line, String words) {
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
            source.fault(line, 1, "cannot read " + LessonNames.quoted(between), ALLOWED);
        }
    }
}
