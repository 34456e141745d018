package loftcoil.runner.show;

import loftcoil.engine.fault.Allowed;
import loftcoil.engine.words.Numeral;
import loftcoil.runner.lesson.Drag;

/** A value to drag, typed instead: a number in the drag's own unit or in any that fits it. */
public final class DragValue {

    private DragValue() {}

    /**
     * The value in the drag's unit.
     *
     * @param drag what is dragged
     * @param typed such as {@code 2.4}, {@code 2,4 m} or {@code 8 ft}
     * @throws loftcoil.engine.fault.RefusedException where it is no number, its unit does not fit, or it is beyond the ends
     */
    public static double of(Drag drag, String typed) {
        double value = Typed.number(Numeral.hyphened(typed), drag.unit(), drag.label());
        return new Allowed(drag.from(), drag.to(), drag.unit()).require(drag.label(), value);
    }
}
