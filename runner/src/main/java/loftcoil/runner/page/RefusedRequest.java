package loftcoil.runner.page;

import java.util.List;
import java.util.Map;

/** A request that is not carried out; the message is what the learner reads. */
final class RefusedRequest extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final int status;
    private final transient Map<String, String> headers;
    private final transient List<String> said;

    /**
     * A refusal of an input.
     *
     * @param words a line for each fault, the path of its field first, by which the page finds that
     * @param said the same lines, the place of each in words
     */
    RefusedRequest(String words, List<String> said) {
        super(words, null, false, false);
        this.status = 400;
        this.headers = Map.of();
        this.said = List.copyOf(said);
    }

    RefusedRequest(int status, String words) {
        this(status, words, Map.of());
    }

    RefusedRequest(int status, String words, Map<String, String> headers) {
        super(words, null, false, false);
        this.status = status;
        this.headers = headers;
        this.said = List.of();
    }

    /** The lines of {@link #words} with their places in words; none where they have no places. */
    List<String> said() {
        return said;
    }

    /** HTTP status code. */
    int status() {
        return status;
    }

    /** Headers that go with it. */
    Map<String, String> headers() {
        return headers;
    }

    /** What the learner reads. */
    String words() {
        return String.valueOf(getMessage());
    }
}
