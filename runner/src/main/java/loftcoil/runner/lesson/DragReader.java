package loftcoil.runner.lesson;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import javax.lang.model.SourceVersion;

/** Reads what a fence says about a value the learner drags. */
final class DragReader {

    private static final List<String> PARTS = List.of("from", "to", "by", "start", "unit", "label");
    private static final int MOST_STOPS = 2000;

    private final SourceText source;
    private final int line;
    private final Map<String, String> words;
    private boolean sound = true;

    DragReader(SourceText source, int line, Map<String, String> words) {
        this.source = source;
        this.line = line;
        this.words = words;
    }

    /** The drag, or nothing where none is asked for or where it is faulty. */
    Optional<Drag> read(String code) {
        String variable = words.get("drag");
        if (variable == null) {
            PARTS.stream()
                    .filter(words::containsKey)
                    .forEach(part -> fault(part + " without drag", "drag= with all of " + PARTS));
            return Optional.empty();
        }
        variable(variable, code);
        double from = number("from");
        double to = number("to");
        double by = number("by");
        double start = number("start");
        String decided = words.getOrDefault("decided", "");
        String unit = text("unit");
        String label = text("label");
        if (sound) {
            range(from, to, by, start);
        }
        String within = words.getOrDefault("within", "");
        return sound
                ? Optional.of(new Drag(variable, from, to, by, start, decided, within, unit, label))
                : Optional.empty();
    }

    private void variable(String variable, String code) {
        if (!SourceVersion.isIdentifier(variable) || SourceVersion.isKeyword(variable)) {
            fault("drag=" + variable, "a name Java takes for a variable, such as tankBaseM");
        } else if (!Pattern.compile("\\b" + Pattern.quote(variable) + "\\b")
                .matcher(code)
                .find()) {
            fault("drag=" + variable + " is not used by the snippet", "a variable that the snippet reads");
        }
    }

    private double number(String key) {
        String text = words.get(key);
        if (text == null) {
            fault("drag without " + key, "drag= with all of " + PARTS);
            return 0;
        }
        try {
            double value = Double.parseDouble(text);
            // Java also reads a trailing d or f, hexadecimal and NaN; a lesson writer means none of them.
            if (Double.isFinite(value) && text.matches("[-+0-9.eE]+")) {
                return value;
            }
        } catch (NumberFormatException e) {
            // falls through to the one message
        }
        fault(key + "=" + text, "a finite number with a decimal point, such as 2.2");
        return 0;
    }

    private String text(String key) {
        String text = words.get(key);
        if (text == null) {
            fault("drag without " + key, "drag= with all of " + PARTS);
            return "";
        }
        if (key.equals("label") && text.isBlank()) {
            fault("label is empty", "what the slider is called, in words");
        }
        return text;
    }

    private void range(double from, double to, double by, double start) {
        if (!(from < to)) {
            fault("from=" + words.get("from") + " to=" + words.get("to"), "from below to");
        } else if (!(by > 0 && by <= to - from && (to - from) / by <= MOST_STOPS)) {
            fault(
                    "by=" + words.get("by"),
                    "above 0, no more than to less from, and no more than " + MOST_STOPS + " stops");
        } else if (!(start >= from && start <= to)) {
            fault("start=" + words.get("start"), "between from and to");
        } else if (!onStop(start - from, by) || !onStop(to - from, by)) {
            fault("start or to is not on a stop", "from plus a whole number of times by");
        }
    }

    private static boolean onStop(double distance, double by) {
        double stops = distance / by;
        return Math.abs(stops - Math.rint(stops)) < 1e-6;
    }

    private void fault(String what, String allowed) {
        sound = false;
        source.fault(line, 1, what, allowed);
    }
}
