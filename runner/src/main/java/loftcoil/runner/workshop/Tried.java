package loftcoil.runner.workshop;

import java.util.List;
import loftcoil.runner.progress.Progress;

/**
 * What one learner made of one question. Answers that could not be read count for nothing.
 *
 * @param state {@code right}, {@code wrong}, {@code decided}, {@code noted}, or empty where it was not tried
 * @param tries answers that were judged
 * @param rightFirst true where the first of them was right
 * @param ideas the known wrong ideas that were seen, each once, in the order they came
 * @param otherWrong wrong answers in which no known idea was seen
 */
record Tried(String state, int tries, boolean rightFirst, List<String> ideas, int otherWrong) {

    static Tried of(List<Progress.Given> answers) {
        List<Progress.Given> counted = answers.stream()
                .filter(given -> !given.state().equals("unread"))
                .toList();
        List<Progress.Given> wrong =
                counted.stream().filter(given -> given.state().equals("wrong")).toList();
        boolean right = counted.stream().anyMatch(given -> given.state().equals("right"));
        int judged = wrong.size()
                + (int) counted.stream()
                        .filter(given -> given.state().equals("right"))
                        .count();
        String state = right
                ? "right"
                : counted.isEmpty() ? "" : counted.get(counted.size() - 1).state();
        return new Tried(
                state,
                judged,
                judged > 0 && counted.get(0).state().equals("right"),
                wrong.stream()
                        .map(Progress.Given::mistake)
                        .filter(idea -> !idea.isEmpty())
                        .distinct()
                        .toList(),
                (int) wrong.stream().filter(given -> given.mistake().isEmpty()).count());
    }

    /** Whether it counts as done. */
    boolean done() {
        return state.equals("right") || state.equals("decided");
    }
}
