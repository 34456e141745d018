package loftcoil.runner.progress;

import java.util.List;

/**
 * What the answers so far amount to. An answer that could not be read, or was in a unit of the wrong kind, is no try.
 *
 * @param wrong how many answers were wrong
 * @param right true where one was right
 */
public record Tries(int wrong, boolean right) {

    /** Wrong answers after which the worked solution is shown. */
    private static final int BEFORE_SOLUTION = 3;

    /** Counts the answers to one question. */
    public static Tries of(List<Progress.Given> answers) {
        int wrong = 0;
        boolean right = false;
        for (Progress.Given given : answers) {
            if (given.state() == AnswerState.WRONG) {
                wrong++;
            }
            right |= given.state() == AnswerState.RIGHT;
        }
        return new Tries(wrong, right);
    }

    /** Wrong answers left before the worked solution is shown; 0 where it is. */
    public int leftBeforeSolution() {
        return solutionDue() ? 0 : BEFORE_SOLUTION - wrong;
    }

    /** True where the worked solution is due: after a right answer, or three wrong ones. */
    public boolean solutionDue() {
        return right || wrong >= BEFORE_SOLUTION;
    }
}
