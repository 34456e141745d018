package loftcoil.engine.clear;

import java.util.List;
import java.util.Set;
import loftcoil.engine.caution.CautionKind;
import loftcoil.engine.design.Design;
import loftcoil.engine.study.NamedValue;
import loftcoil.engine.words.MeasuredText;

/**
 * Something of a design that can be changed to clear a danger.
 *
 * @param code by which its words and its row in the page of models are known
 * @param clears the dangers it is tried on
 * @param cost relative cost of the smallest step; 1 is an hour's work and a small part. Common practice, no source
 * @param costAStep what each further step costs more
 * @param conduct whether it is what people do and not what is built
 * @param steps the steps that a design leaves, the smallest first
 */
record Lever(String code, Set<CautionKind> clears, double cost, double costAStep, boolean conduct, Ladder steps) {

    private static final double TENTHS = 10;

    Lever {
        clears = Set.copyOf(clears);
    }

    /**
     * One step of a lever.
     *
     * @param changes what is changed, together
     * @param words the same in words
     */
    record Step(List<NamedValue> changes, MeasuredText words) {
        Step {
            changes = List.copyOf(changes);
        }
    }

    /** Where the steps of a lever come from. */
    interface Ladder {
        /** The steps, the smallest first; none where the lever means nothing to this design. */
        List<Step> of(Design design);
    }

    /** The way that its step of a number from 0 is. */
    Way way(Step step, int number) {
        return new Way(step.changes(), step.words(), rounded(cost + number * costAStep));
    }

    /** A cost to a tenth. */
    static double rounded(double cost) {
        return Math.rint(cost * TENTHS) / TENTHS;
    }
}
