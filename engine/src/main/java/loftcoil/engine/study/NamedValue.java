package loftcoil.engine.study;

import java.util.ArrayList;
import java.util.List;
import loftcoil.engine.design.Change;
import loftcoil.engine.design.Changes;
import loftcoil.engine.design.Design;

/**
 * One change of a rebuild.
 *
 * @param name one of {@link Changes#names}
 * @param value what it is to be, as {@link Changes#apply} takes it
 */
public record NamedValue(String name, String value) {

    /**
     * The design with it.
     *
     * @throws loftcoil.engine.fault.RefusedException where the name or value is unknown or the design cannot take it
     */
    public Design appliedTo(Design design) {
        return Changes.apply(design, name, value);
    }

    /**
     * What it is, such as "Tank base above the floor 2.6 m".
     *
     * @throws loftcoil.engine.fault.RefusedException where the name is unknown
     */
    public String words() {
        Change change = Changes.describe(name);
        return change.label() + ": " + value + (change.unit().isEmpty() ? "" : " " + change.unit());
    }

    /** The named changes in which two designs differ, each with the value the later one has. */
    public static List<NamedValue> between(Design before, Design after) {
        List<NamedValue> found = new ArrayList<>();
        for (String name : Changes.names()) {
            String now = Changes.current(after, name);
            if (!now.equals(Changes.current(before, name))) {
                found.add(new NamedValue(name, now));
            }
        }
        return List.copyOf(found);
    }
}
