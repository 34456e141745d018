package loftcoil.engine.design;

import java.util.List;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.fault.KnownNames;
import loftcoil.engine.fault.RefusedException;

/**
 * A place in a design on the way to it.
 *
 * @param path the whole path
 * @param steps what is left of it, such as {@code coldLegs}, {@code [1]}, {@code riseM}
 * @param text what is to stand there
 * @param design the design, to start missing parts from
 * @param sketched whether a part of which nothing may be assumed is started with nothing in it, since all of it is being told
 */
record Target(String path, List<String> steps, String text, Design design, boolean sketched) {

    static Target of(Design design, String path, String text) {
        return new Target(path, List.of(path.replace("[", ".[").split("\\.", -1)), text, design, false);
    }

    /** The same for one of several fields that are told together. */
    Target inSketch() {
        return new Target(path, steps, text, design, true);
    }

    /** The next step; empty at the end. */
    String step() {
        return steps.isEmpty() ? "" : steps.get(0);
    }

    Target next() {
        return new Target(path, steps.isEmpty() ? steps : steps.subList(1, steps.size()), text, design, sketched);
    }

    /**
     * Makes sure that the path ends here.
     *
     * @throws RefusedException where it goes on
     */
    void end() {
        if (!steps.isEmpty()) {
            throw unknown();
        }
    }

    /** Which item of a list the next step names. */
    int index(int size) {
        String step = step();
        if (step.matches("\\[\\d{1,6}]")) {
            int index = Integer.parseInt(step.substring(1, step.length() - 1));
            if (index < size) {
                return index;
            }
            throw refused("[" + index + "]", size + (size == 1 ? " item" : " items"), "the first is [0]");
        }
        throw unknown();
    }

    RefusedException unknown() {
        return unknown(path);
    }

    /** Refuses a path that no design has. */
    static RefusedException unknown(String path) {
        return new RefusedException(List.of(new KnownNames("field", DesignFields.paths()).unknown("change", path)));
    }

    RefusedException refused(String given, String allowed, String why) {
        return new RefusedException(List.of(new Fault(path, given, allowed, why)));
    }
}
