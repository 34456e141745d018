package loftcoil.runner.lesson;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.commonmark.ext.front.matter.YamlFrontMatterNode;
import org.commonmark.node.Node;

/**
 * What a lesson says of itself between the two lines of dashes at its head.
 *
 * @param title its title
 * @param step the step of the whole job it serves
 * @param minutes how long it takes
 * @param needs names of the lessons it builds on
 * @param unclosed whether it begins and never ends; then nothing can be said of what would stand behind it
 */
record FrontMatter(String title, int step, int minutes, List<String> needs, boolean unclosed) {

    private static final int NONE = 0;
    private static final String KEYS = "title, step, minutes and needs, each once";
    private static final Pattern KEY = Pattern.compile("^ {0,3}([A-Za-z0-9._-]+):(?:\\s.*)?$");
    private static final Pattern ITEM = Pattern.compile("^\\s+-\\s.*$");
    private static final Pattern LESSON_ID = Pattern.compile("\\d\\d-[a-z0-9]+(-[a-z0-9]+)*");

    /** Reads it from the parsed block, with places from the text; every problem becomes a fault. */
    static FrontMatter read(SourceText source, Node document) {
        int closing = closing(source.lines());
        Map<String, Integer> lineOf = places(source, closing);
        Map<String, List<String>> values = new HashMap<>();
        eachPair(document, pair -> values.putIfAbsent(pair.getKey(), pair.getValues()));
        String title = one(source, values, lineOf, "title", "a title in words");
        int step = whole(source, values, lineOf, "step", 10);
        int minutes = whole(source, values, lineOf, "minutes", 180);
        return new FrontMatter(
                title,
                step,
                minutes,
                needs(source, values, lineOf),
                closing == source.lines().size());
    }

    private static Map<String, Integer> places(SourceText source, int closing) {
        Map<String, Integer> lineOf = new HashMap<>();
        List<String> lines = source.lines();
        if (closing == NONE) {
            source.fault(1, 1, "no front matter", "a line of --- first, then " + KEYS + ", then a line of ---");
            return lineOf;
        }
        if (closing == lines.size()) {
            // One slip, one fault: what the lines below would be as keys says nothing.
            source.fault(1, 1, "front matter is never closed", "a line of --- after the last key");
            return lineOf;
        }
        for (int i = 1; i < closing; i++) {
            place(source, lineOf, lines.get(i), i + 1);
        }
        missing(source, lineOf, closing + 1);
        return lineOf;
    }

    /** The index of the line that closes it, as many as there are lines where none does. */
    private static int closing(List<String> lines) {
        if (!lines.get(0).stripTrailing().equals("---")) {
            return NONE;
        }
        int closing = 1;
        while (closing < lines.size() && !lines.get(closing).stripTrailing().equals("---")) {
            closing++;
        }
        return closing;
    }

    private static void place(SourceText source, Map<String, Integer> lineOf, String line, int number) {
        Matcher key = KEY.matcher(line);
        if (!key.matches()) {
            if (!line.isBlank() && !ITEM.matcher(line).matches()) {
                source.fault(number, 1, "not a key and its value: " + LessonNames.quoted(line), KEYS);
            }
        } else if (!List.of("title", "step", "minutes", "needs").contains(key.group(1))) {
            source.fault(number, 1, "unknown key " + LessonNames.quoted(key.group(1)), KEYS);
        } else if (lineOf.putIfAbsent(key.group(1), number) != null) {
            source.fault(number, 1, "key " + LessonNames.quoted(key.group(1)) + " stands there twice", KEYS);
        }
    }

    private static void missing(SourceText source, Map<String, Integer> lineOf, int closing) {
        for (String key : List.of("title", "step", "minutes", "needs")) {
            if (!lineOf.containsKey(key)) {
                source.fault(closing, 1, "key " + LessonNames.quoted(key) + " is missing", KEYS);
            }
        }
    }

    private static void eachPair(Node document, Consumer<YamlFrontMatterNode> use) {
        Node block = document.getFirstChild();
        Node child = block == null ? null : block.getFirstChild();
        while (child != null) {
            if (child instanceof YamlFrontMatterNode pair) {
                use.accept(pair);
            }
            child = child.getNext();
        }
    }

    private static String one(
            SourceText source,
            Map<String, List<String>> values,
            Map<String, Integer> lineOf,
            String key,
            String allowed) {
        Integer line = lineOf.get(key);
        String value = String.join(" ", values.getOrDefault(key, List.of())).strip();
        if (line != null && value.isEmpty()) {
            source.fault(line, 1, key + " is empty", allowed);
        }
        return value;
    }

    private static int whole(
            SourceText source, Map<String, List<String>> values, Map<String, Integer> lineOf, String key, int most) {
        String allowed = "a whole number from 1 to " + most;
        String text = one(source, values, lineOf, key, allowed);
        OptionalInt number = text.matches("\\d{1,4}") ? OptionalInt.of(Integer.parseInt(text)) : OptionalInt.empty();
        if (number.isPresent() && number.getAsInt() >= 1 && number.getAsInt() <= most) {
            return number.getAsInt();
        }
        Integer line = lineOf.get(key);
        if (line != null && !text.isEmpty()) {
            source.fault(line, 1, key + " is " + LessonNames.quoted(text), allowed);
        }
        return 1;
    }

    private static List<String> needs(
            SourceText source, Map<String, List<String>> values, Map<String, Integer> lineOf) {
        List<String> needs = new ArrayList<>();
        for (String value : values.getOrDefault("needs", List.of())) {
            for (String name : value.split("[,\\s]+", -1)) {
                if (LESSON_ID.matcher(name).matches()) {
                    needs.add(name);
                } else if (!name.isEmpty()) {
                    source.fault(
                            lineOf.getOrDefault("needs", 1),
                            1,
                            "needs " + LessonNames.quoted(name),
                            "names of earlier lessons such as 01-warm-water, with commas between, or nothing");
                }
            }
        }
        return needs;
    }
}
