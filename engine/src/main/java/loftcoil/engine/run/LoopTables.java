package loftcoil.engine.run;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;

/**
 * A loop over the months of a year. Without pipes outdoors it is one table. With them it is one table with the air as in the coldest month
 * and one as in the warmest; what a month does lies between the two as its mean air does, since loss and push are nearly straight lines in the
 * temperature round a pipe. Immutable.
 *
 * @param cold the loop in the coldest month, or in every month where no pipe runs outdoors
 * @param warm the loop in the warmest; empty where no pipe runs outdoors or all months are alike
 * @param shares for each month, January first, how near it is to the warmest, 0 to 1
 */
record LoopTables(LoopTable cold, Optional<LoopTable> warm, List<Double> shares) {

    private static final int MONTHS = 12;

    LoopTables {
        shares = List.copyOf(shares);
    }

    /** A loop that no month changes. */
    static LoopTables of(LoopTable table) {
        return new LoopTables(table, Optional.empty(), Collections.nCopies(MONTHS, 0.0));
    }

    /**
     * A loop with pipes outdoors.
     *
     * @param monthsC mean air of the months, January first, °C
     * @param table the loop with the air outdoors at a temperature, °C
     */
    static LoopTables of(List<Double> monthsC, DoubleFunction<LoopTable> table) {
        double coldC = Collections.min(monthsC);
        double warmC = Collections.max(monthsC);
        if (coldC == warmC) {
            return of(table.apply(coldC));
        }
        return new LoopTables(
                table.apply(coldC),
                Optional.of(table.apply(warmC)),
                monthsC.stream().map(airC -> (airC - coldC) / (warmC - coldC)).toList());
    }
}
