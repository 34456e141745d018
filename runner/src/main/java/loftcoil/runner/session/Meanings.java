package loftcoil.runner.session;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Properties;

/** What the names that lessons call mean, in one line each, from a table beside this class. */
final class Meanings {

    private static final Properties TABLE = read();

    private Meanings() {}

    /**
     * The meaning of a name.
     *
     * @param owner the type or variable that stands before its dot; empty where none does
     * @param name the name alone
     * @return one line; empty where the table does not have it
     */
    static String of(String owner, String name) {
        String ofOwner = TABLE.getProperty(owner + "." + name, "");
        return ofOwner.isEmpty() ? TABLE.getProperty(name, "") : ofOwner;
    }

    private static Properties read() {
        Properties table = new Properties();
        try (InputStream in = Meanings.class.getResourceAsStream("meanings.properties")) {
            if (in == null) {
                throw new IllegalStateException("meanings.properties is missing from the program");
            }
            table.load(new InputStreamReader(in, StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return table;
    }
}
