package loftcoil.engine.run;

/**
 * Days marched in blocks that have their mean weather together. A block's days are marched one by one until one of them leaves the tank
 * nearly as it found it; that day then stands for the rest of its block, and the tank goes on by its change as many times more. So the
 * account closes and sun and fire are those of all days, while a year of slow seasons is marched in half of its days.
 *
 * <p>The first day of a block meets weather that jumps, and is never the one that stands for others: what decays within hours would be
 * carried on, and the tank would swing.
 */
final class DayBlocks {

    private static final int LEAST_MARCHED = 2;

    /** A day that changes no layer by more than a sixth of a kelvin stands for others. */
    private static final double LITTLE_J_PER_KG = 700;

    private final SystemMarch march;
    private final int blockDays;
    private final double[] before;
    private Totals counted;
    private long marchedDays;

    DayBlocks(SystemMarch march, Pace pace) {
        this.march = march;
        blockDays = pace.blockDays();
        before = new double[pace.layers()];
        counted = march.totals();
    }

    /** All that was counted, days that were not marched included. */
    Totals counted() {
        return counted;
    }

    /** Days that were marched. */
    long marchedDays() {
        return marchedDays;
    }

    /** So many days from one on, all of one month; days before and after the year count round. */
    void days(int first, int count) {
        int blocks = (count + blockDays - 1) / blockDays;
        int from = 0;
        for (int block = 0; block < blocks; block++) {
            int to = (int) ((long) count * (block + 1) / blocks);
            block(first + from, to - from);
            from = to;
        }
    }

    private void block(int first, int days) {
        int marched = 0;
        while (marched < days) {
            double kgBefore = march.tank().massKg();
            march.tank().heats(before);
            march.watch().beginDay();
            Totals start = march.totals();
            march.day(first + marched, first, days);
            marched++;
            marchedDays++;
            int left = days - marched;
            Totals day = march.totals().since(start);
            if (marched >= LEAST_MARCHED
                    && left > 0
                    && march.tank().massKg() == kgBefore
                    && march.tank().goOn(before, left, LITTLE_J_PER_KG)) {
                march.watch().again(left);
                counted = counted.and(day, 1 + left);
                return;
            }
            counted = counted.and(day, 1);
        }
    }
}
