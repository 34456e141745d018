package loftcoil.runner.terminal;

import loftcoil.runner.progress.AnswerState;
import loftcoil.runner.show.View;

/** What is said to an answer, as lines of text. */
final class ReplyText {

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
        return reply.state().isDone() || reply.state() == AnswerState.NOTED;
    }
}
