package loftcoil.runner.session;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Numbers the host sets from outside inside the snippets' Java machine. The assignment that reads one is compiled once
 * and run again for each new value, which makes dragging quick. Public only because that assignment is a snippet.
 */
public final class DraggedValues {

    private static final Map<String, Double> NUMBERS = new ConcurrentHashMap<>();

    private DraggedValues() {}

    /** Keeps a number given as {@code name=value}. */
    static void set(String nameAndValue) {
        int at = nameAndValue.indexOf('=');
        NUMBERS.put(nameAndValue.substring(0, at), Double.valueOf(nameAndValue.substring(at + 1)));
    }

    /**
     * The number last set.
     *
     * @param name name of the variable
     * @throws IllegalStateException where none was set
     */
    public static double number(String name) {
        Double number = NUMBERS.get(name);
        if (number == null) {
            throw new IllegalStateException("no number was set for " + name);
        }
        return number;
    }
}
