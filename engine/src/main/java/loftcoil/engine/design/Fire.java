package loftcoil.engine.design;

import java.util.List;

/**
 * The fire and when it burns.
 *
 * @param wood a name of the table of woods: {@code hardwood}, {@code softwood} or a species
 * @param moisturePct water in the wood, percent of its whole mass; 0 to 60
 * @param burnKgPerH wood burnt an hour, kg/h; 0.1 to 20
 * @param litFromH time of day it is lit, h; 0 to 24
 * @param litForH how long it burns, h; 0 to 24
 * @param months months in which it is lit, 1 to 12
 */
public record Fire(
        String wood, double moisturePct, double burnKgPerH, double litFromH, double litForH, List<Integer> months) {

    /** Keeps a copy of the months. */
    public Fire {
        months = List.copyOf(months);
    }
}
