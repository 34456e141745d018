package loftcoil.runner.session;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;

/** Puts the learner's design into a session as the variable {@code design}. */
public final class DesignBinding {

    private static final ObjectMapper JSON = new ObjectMapper();

    private DesignBinding() {}

    /**
     * Binds or binds again.
     *
     * @param session where to
     * @param designJson the design as JSON, already known to read
     * @throws SessionException where the session refuses it
     */
    public static void bind(Session session, String designJson) {
        session.bind("Design", "design", "DesignJson.read(" + javaString(designJson) + ")");
    }

    /** A JSON string is a Java string literal too: both escape quotes, backslashes and control characters alike. */
    private static String javaString(String text) {
        try {
            return JSON.writeValueAsString(text);
        } catch (JsonProcessingException e) {
            throw new SessionException("the design cannot be written as text: " + e.getMessage());
        }
    }
}
