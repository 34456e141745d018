package loftcoil.engine.clear;

import java.util.ArrayList;
import java.util.List;
import loftcoil.engine.words.MeasuredText;

/** What the search found, in the words that every face has for it. */
public final class ClearWords {

    private ClearWords() {}

    /** What stands before the ways of a danger, cheapest first, or that none was found and why. */
    public static MeasuredText head(Cleared cleared) {
        if (!cleared.ways().isEmpty()) {
            return Steps.SENTENCES.say("head");
        }
        return cleared.because()
                .map(because -> Steps.SENTENCES.say("none-because", "because", because))
                .orElseGet(() -> Steps.SENTENCES.say("none"));
    }

    /** What stands before conduct that makes it rarer; only where there is any. */
    public static MeasuredText rarerHead() {
        return Steps.SENTENCES.say("rarer");
    }

    /** What is said of a danger where nobody has searched yet. */
    public static MeasuredText notSearched() {
        return Steps.SENTENCES.say("not-searched");
    }

    /** All of it as sentences one after the other: the head, each way, the other head, each conduct. */
    public static List<MeasuredText> all(Cleared cleared) {
        List<MeasuredText> words = new ArrayList<>(List.of(head(cleared)));
        cleared.ways().forEach(way -> words.add(Steps.SENTENCES.say("item", "what", way.words())));
        if (!cleared.rarer().isEmpty()) {
            words.add(rarerHead());
            cleared.rarer().forEach(way -> words.add(Steps.SENTENCES.say("item", "what", way.words())));
        }
        return List.copyOf(words);
    }
}
