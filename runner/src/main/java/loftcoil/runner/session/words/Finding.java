package loftcoil.runner.session.words;

import java.util.Arrays;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One thing the compiler found.
 *
 * @param code the compiler's key for it, such as {@code compiler.err.expected}; empty where it has none
 * @param message the compiler's own words, in English
 * @param source the learner's whole snippet
 * @param at offset it is found at, from 0
 * @param known names that could have been meant
 */
public record Finding(String code, String message, String source, int at, Set<String> known) {

    /** Keeps its own copy and stays within the source. */
    public Finding {
        known = Set.copyOf(known);
        at = Math.max(0, Math.min(at, source.length()));
    }

    boolean is(String key) {
        return code.equals("compiler.err." + key) || code.startsWith("compiler.err." + key + ".");
    }

    boolean isAny(String... keys) {
        return Arrays.stream(keys).anyMatch(this::is);
    }

    /** The line it is found on. */
    String line() {
        int from = source.lastIndexOf('\n', at - 1) + 1;
        int to = source.indexOf('\n', at);
        return source.substring(from, to < 0 ? source.length() : to);
    }

    /** Types of Java's own packages are known by their last name. */
    static String shortNames(String text) {
        return text.replaceAll("\\bjava\\.(?:\\w+\\.)+(?=[A-Z])", "");
    }

    /** First group of a pattern in the compiler's words, types by their short names; empty where it is not there. */
    String inMessage(String pattern) {
        Matcher matcher = Pattern.compile(pattern).matcher(message);
        return matcher.find() ? shortNames(matcher.group(1)) : "";
    }
}
