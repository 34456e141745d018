package loftcoil.engine.supply;

import java.util.List;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.fault.RefusedException;

/**
 * A place where a pipe parts. Its own losses belong to the pipes after it, as fittings {@code tee-run} and {@code tee-branch}.
 *
 * @param branches the pipes that leave it, 1 to 20
 */
public record Tee(List<Branch> branches) implements SupplyEnd {

    /** No more branches leave one tee. */
    public static final int MOST = 20;

    /**
     * Checks the number of branches.
     *
     * @throws RefusedException where there is none or too many
     */
    public Tee {
        branches = List.copyOf(branches);
        if (branches.isEmpty() || branches.size() > MOST) {
            throw new RefusedException(List.of(
                    new Fault("branches", Integer.toString(branches.size()), "1 to " + MOST, "a tee leads somewhere")));
        }
    }
}
