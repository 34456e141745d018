package loftcoil.runner.progress;

import com.fasterxml.jackson.annotation.JsonProperty;

/** What came of an answer; the code is what files and pages hold. */
public enum AnswerState {
    /** Right. */
    @JsonProperty("right")
    RIGHT("right"),
    /** Wrong: a try that counts. */
    @JsonProperty("wrong")
    WRONG("wrong"),
    /** A guess before a run, which is kept and not judged. */
    @JsonProperty("noted")
    NOTED("noted"),
    /** A decision that stands in the design. */
    @JsonProperty("decided")
    DECIDED("decided"),
    /** It could not be read, or its unit was of the wrong kind: no try. */
    @JsonProperty("unread")
    UNREAD("unread"),
    /** In the refresher: the learner says they do not remember. */
    @JsonProperty("forgotten")
    FORGOTTEN("forgotten");

    private final String code;

    AnswerState(String code) {
        this.code = code;
    }

    /** What files and pages hold. */
    public String code() {
        return code;
    }

    /** Whether a question with this answer counts as done. */
    public boolean isDone() {
        return this == RIGHT || this == DECIDED;
    }
}
