package loftcoil.runner.workshop;

import java.util.List;
import java.util.Optional;
import loftcoil.runner.progress.AnswerState;
import loftcoil.runner.progress.Progress;

/**
 * What one learner made of one question. Answers that could not be read count for nothing.
 *
 * @param state right where one answer was, else that of the last; empty where it was not tried
 * @param tries answers that were judged
 * @param rightFirst true where the first of them was right
 * @param ideas the known wrong ideas that were seen, each once, in the order they came
 * @param otherWrong wrong answers in which no known idea was seen
 */
record Tried(Optional<AnswerState> state, int tries, boolean rightFirst, List<String> ideas, int otherWrong) {

    static Tried of(List<Progress.Given> answers) {
        List<Progress.Given> counted = answers.stream()
                .filter(given -> given.state() != AnswerState.UNREAD)
                .toList();
        List<Progress.Given> wrong = counted.stream()
                .filter(given -> given.state() == AnswerState.WRONG)
                .toList();
        boolean right = counted.stream().anyMatch(given -> given.state() == AnswerState.RIGHT);
        int judged = wrong.size()
                + (int) counted.stream()
                        .filter(given -> given.state() == AnswerState.RIGHT)
                        .count();
        Optional<AnswerState> state = right
                ? Optional.of(AnswerState.RIGHT)
                : counted.stream().map(Progress.Given::state).reduce((first, last) -> last);
        return new Tried(
                state,
                judged,
                judged > 0 && counted.get(0).state() == AnswerState.RIGHT,
                wrong.stream()
                        .map(Progress.Given::mistake)
                        .filter(idea -> !idea.isEmpty())
                        .distinct()
                        .toList(),
                (int) wrong.stream().filter(given -> given.mistake().isEmpty()).count());
    }

    /** Whether it is right now. */
    boolean right() {
        return state.equals(Optional.of(AnswerState.RIGHT));
    }
}
