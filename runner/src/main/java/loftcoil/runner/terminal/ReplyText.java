package loftcoil.runner.terminal;

import java.util.Set;
import loftcoil.runner.show.View;

/** What is said to an answer, as lines of text. */
final class ReplyText {

    /** Replies after which the walk goes on by itself. */
    private static final Set<String> SETTLED = Set.of("right", "noted", "decided");

    private ReplyText() {}

    /** Says it; true where the walk may go on. */
    static boolean say(Console console, View.Reply reply) {
        console.say(PlainText.of(reply.words(), console.width()));
        if (!reply.hintMarkdown().isEmpty()) {
            console.say(PlainText.of(reply.hintMarkdown(), console.width()));
        }
        if (!reply.workedMarkdown().isEmpty()) {
            console.say("\nWorked through:\n" + PlainText.of(reply.workedMarkdown(), console.width()));
        }
        if (!reply.source().isEmpty()) {
            Wrap.lines("Source: " + reply.source(), console.width()).forEach(console::say);
        }
        return SETTLED.contains(reply.state());
    }
}
