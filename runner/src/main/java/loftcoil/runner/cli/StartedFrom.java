package loftcoil.runner.cli;

import java.nio.file.Path;

/**
 * The folder a person stood in when they started Loftcoil. The starter of a carried Loftcoil goes into Loftcoil's own folder first
 * and says here where it came from, so that a file named on the command line is still looked for where the person meant it.
 */
final class StartedFrom {

    /** Name of the system property that the starter sets. */
    static final String PROPERTY = "loftcoil.from";

    /** The same in the environment, where the system hands every letter on; the property comes first. */
    static final String ENVIRONMENT = "LOFTCOIL_FROM";

    private StartedFrom() {}

    /** The file of that name, seen from there. */
    static Path file(String name) {
        return file(name, System.getProperty(PROPERTY, System.getenv().getOrDefault(ENVIRONMENT, "")));
    }

    static Path file(String name, String from) {
        return from.isEmpty() ? Path.of(name) : Path.of(from).resolve(name);
    }
}
