package loftcoil.runner.show;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import loftcoil.engine.words.Measure;

/**
 * How a house is drawn.
 *
 * @param size in units of its picture
 * @param speak how a measure is written
 * @param tapNames whether labels have the names of the taps besides their marks
 * @param pieces what each pipe is cut into, by its mark; empty where nobody asks
 * @param bar the bar of the scale
 * @param views from where it is drawn
 */
public record HousePen(
        Size size,
        Function<Measure, String> speak,
        boolean tapNames,
        Map<String, List<String>> pieces,
        Bar bar,
        Views views) {

    /** Keeps a copy of the pieces. */
    public HousePen {
        pieces = Map.copyOf(pieces);
    }

    /**
     * Sizes in units of the picture.
     *
     * @param perM for each metre of the building
     * @param margin round the house
     * @param stroke width of a pipe
     * @param letters size of its letters
     */
    public record Size(double perM, double margin, double stroke, double letters) {
        double lineApart() {
            return 1.18 * letters;
        }
    }

    /** From where a house is drawn. */
    public enum Views {
        /** From the side. */
        SIDE,
        /** From the side, as wide as the plan that stands below it as a picture of its own. */
        SIDE_OVER_PLAN,
        /** From the side, and from above below that. */
        BOTH
    }

    /**
     * The bar of the scale.
     *
     * @param lengthM its length, m
     * @param words what stands beside it
     */
    public record Bar(double lengthM, String words) {}
}
