package loftcoil.engine.design;

import java.util.List;

/**
 * When the dwelling stands empty and unheated.
 *
 * @param months months, 1 to 12; none where it is lived in all year
 * @param drained whether tank, loop and taps are drained for that time
 */
public record Absence(List<Integer> months, boolean drained) {

    /** Keeps a copy of the months. */
    public Absence {
        months = List.copyOf(months);
    }
}
