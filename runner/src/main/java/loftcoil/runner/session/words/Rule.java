package loftcoil.runner.session.words;

import java.util.List;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/** Says one kind of mistake in plain words. */
@FunctionalInterface
interface Rule {

    /** The words, or empty where it is not this kind of mistake. */
    Optional<String> say(Finding finding);

    /** Says a sentence for any of some of the compiler's keys, parted by blanks. */
    static Rule key(String keys, String sentence) {
        return key(keys, "", sentence);
    }

    /** Says a sentence where a pattern is found in the compiler's words. */
    static Rule message(String pattern, String sentence) {
        return key("", pattern, sentence);
    }

    /**
     * Says a sentence for some of the compiler's keys where a pattern is found in its words.
     *
     * @param keys parted by blanks; empty for any
     * @param pattern its groups fill the sentence
     * @param sentence with {@code {1}} for the first group, and so on
     */
    static Rule key(String keys, String pattern, String sentence) {
        List<String> wanted = keys.isEmpty() ? List.of() : List.of(keys.split(" "));
        Pattern found = Pattern.compile(pattern, Pattern.DOTALL);
        return finding -> wanted.isEmpty() || wanted.stream().anyMatch(finding::is)
                ? found.matcher(finding.message()).results().findFirst().map(match -> filled(sentence, match))
                : Optional.empty();
    }

    private static String filled(String sentence, MatchResult match) {
        String filled = sentence;
        for (int i = 1; i <= match.groupCount(); i++) {
            String group = match.group(i).strip();
            String plain = group.startsWith("no arguments") ? "nothing" : Finding.shortNames(group);
            filled = filled.replace("{" + i + "}", plain);
        }
        return filled;
    }
}
