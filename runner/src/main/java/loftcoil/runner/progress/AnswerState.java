package loftcoil.runner.progress;

import com.fasterxml.jackson.annotation.JsonValue;

/** What came of an answer; the code is what files and pages hold. */
public enum AnswerState {
    /** Right. */
    RIGHT("right"),
    /** Wrong: a try that counts. */
    WRONG("wrong"),
    /** A guess before a run, which is kept and not judged. */
    NOTED("noted"),
    /** A decision that stands in the design. */
    DECIDED("decided"),
    /** It could not be read, or its unit was of the wrong kind: no try. */
    UNREAD("unread"),
    /** In the refresher: the learner says they do not remember. */
    FORGOTTEN("forgotten");

    private final String code;

    AnswerState(String code) {
        this.code = code;
    }

    /** What files and pages hold. */
    @JsonValue
    public String code() {
        return code;
    }

    /** Whether a question with this answer counts as done. */
    public boolean isDone() {
        return this == RIGHT || this == DECIDED;
    }
}
