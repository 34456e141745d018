package loftcoil.engine.clear;

import java.util.List;
import java.util.Optional;
import java.util.function.IntPredicate;
import loftcoil.engine.caution.CautionKind;
import loftcoil.engine.design.Design;

/**
 * The steps of a lever or of a pair, as designs, and the smallest that may be enough.
 *
 * @param tries the steps, the smallest first
 * @param at number of the step that is taken up next, from 0
 */
record Guess(List<Try> tries, int at) {

    /** Steps that are looked at beyond the first that a rough judgement calls enough. */
    private static final int BEYOND = 2;

    /** One step and the design with it. */
    record Try(Way way, Design design) {}

    Guess {
        tries = List.copyOf(tries);
    }

    Way way() {
        return tries.get(at).way();
    }

    Design design() {
        return tries.get(at).design();
    }

    /** The same one step further; empty where there is none. */
    Optional<Guess> further() {
        return at + 1 < tries.size() ? Optional.of(new Guess(tries, at + 1)) : Optional.empty();
    }

    /** The same half of what is left further, at least a step; empty where nothing is left. */
    Optional<Guess> muchFurther() {
        int left = tries.size() - 1 - at;
        return left > 0 ? Optional.of(new Guess(tries, at + (left + 1) / 2)) : Optional.empty();
    }

    /** The same, a start that was judged coarsely marched as for the whole verdict: the first step from here on that is enough so. */
    Optional<Guess> sure(CautionKind danger, Judge judge) {
        return judge.clean(design(), danger, Depth.SURE_STARTS)
                ? Optional.of(this)
                : smallest(tries.subList(at + 1, tries.size()), danger, judge, Depth.SURE_STARTS);
    }

    /** The smallest of the steps that is enough, judged only as deeply as it takes to see the danger; empty where none is. */
    static Optional<Guess> smallest(List<Try> tries, CautionKind danger, Judge judge, Depth depth) {
        int last = tries.size() - 1;
        if (last < 0 || !judge.gone(tries.get(last).design(), danger, depth)) {
            return Optional.empty();
        }
        if (judge.clean(tries.get(last).design(), danger, depth)) {
            return Optional.of(
                    new Guess(tries, first(last, i -> judge.clean(tries.get(i).design(), danger, depth))));
        }
        // The largest step brings something else; a smaller one may be enough and not bring it.
        int from = first(last, i -> judge.gone(tries.get(i).design(), danger, depth));
        for (int i = from; i <= Math.min(last, from + BEYOND); i++) {
            if (judge.clean(tries.get(i).design(), danger, depth)) {
                return Optional.of(new Guess(tries, i));
            }
        }
        return Optional.empty();
    }

    /** By halving: the first that is enough, the last being so. */
    private static int first(int last, IntPredicate enough) {
        int low = 0;
        int high = last;
        while (low < high) {
            int middle = (low + high) / 2;
            if (enough.test(middle)) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return high;
    }
}
