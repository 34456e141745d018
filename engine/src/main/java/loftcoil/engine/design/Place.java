package loftcoil.engine.design;

import org.jspecify.annotations.Nullable;

/**
 * A place in a design that is being judged; its path is written only where there is something wrong, since designs are judged often.
 *
 * @param owner the object or list round it; null for the design itself
 * @param step its name, or nothing for an item of a list
 * @param index its number in a list, from 0; less than 0 for a field
 */
record Place(@Nullable Place owner, String step, int index) {

    /** The design itself. */
    static final Place TOP = new Place(null, "", -1);

    Place field(String name) {
        return new Place(this, name, -1);
    }

    Place item(int number) {
        return new Place(this, "", number);
    }

    /** The path, such as {@code coldLegs[1].riseM}. */
    String path() {
        String before = owner == null ? "" : owner.path();
        return index >= 0 ? before + "[" + index + "]" : Form.at(before, step);
    }
}
