package loftcoil.runner.page;

import java.util.Map;

/** A request that is not carried out; the message is what the learner reads. */
final class RefusedRequest extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final int status;
    private final transient Map<String, String> headers;

    RefusedRequest(int status, String words) {
        this(status, words, Map.of());
    }

    RefusedRequest(int status, String words, Map<String, String> headers) {
        super(words, null, false, false);
        this.status = status;
        this.headers = headers;
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
