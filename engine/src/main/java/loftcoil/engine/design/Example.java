package loftcoil.engine.design;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The design the course starts from: an invented one, marked so in its notes. */
public final class Example {

    private static final String RESOURCE = "orchard-bothy.json";

    private Example() {}

    /** A bothy in a hillside orchard; invented, no real place. */
    public static Design orchardBothy() {
        return DesignJson.read(orchardBothyJson());
    }

    /** The same as JSON text, to start a design file from. */
    public static String orchardBothyJson() {
        return json(RESOURCE);
    }

    /** The text of an example beside this class. */
    static String json(String resource) {
        try (InputStream in = Example.class.getResourceAsStream(resource)) {
            if (in == null) {
                throw new IllegalStateException(resource + " is missing from the engine");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(resource, unreadable);
        }
    }
}
