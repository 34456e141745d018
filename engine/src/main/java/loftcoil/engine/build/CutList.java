package loftcoil.engine.build;

import java.util.List;
import loftcoil.engine.design.Design;
import loftcoil.engine.words.Measure;
import loftcoil.engine.words.MeasuredText;

/**
 * Every piece of tube to cut, and how the pieces come out of stock lengths.
 *
 * @param pieces the pieces, leg by leg in the direction of flow
 * @param bars the lengths to buy, each with the pieces cut from it
 * @param rules how the cut lengths and the packing were reckoned, and what to check with a fitting in the hand
 */
public record CutList(List<Piece> pieces, List<Bar> bars, List<MeasuredText> rules) {

    /** Keeps copies of the lists. */
    public CutList {
        pieces = List.copyOf(pieces);
        bars = List.copyOf(bars);
        rules = List.copyOf(rules);
    }

    /**
     * The list alone, without the years of a whole build sheet.
     *
     * @param design a design
     */
    public static CutList of(Design design) {
        return CutMaker.of(design);
    }

    /**
     * A piece of tube.
     *
     * @param mark what to write on it, such as {@code H1-2}
     * @param leg leg, coil or tap it belongs to
     * @param tube name of its tube
     * @param centreMm its share of the drawn length, from middle to middle of the fittings at its ends, mm
     * @param takeOffMm what the fittings at its ends stand for, mm
     * @param cutMm length to cut, mm
     * @param between what is at its two ends
     */
    public record Piece(
            String mark,
            String leg,
            String tube,
            Measure centreMm,
            Measure takeOffMm,
            Measure cutMm,
            MeasuredText between) {}

    /**
     * A length of tube as it is sold.
     *
     * @param tube name of the tube
     * @param stockM length as sold, m
     * @param marks pieces cut from it, in the order of cutting
     * @param usedM sum of the pieces, m
     * @param wasteM what is left, saw cuts included, m
     */
    public record Bar(String tube, Measure stockM, List<String> marks, Measure usedM, Measure wasteM) {

        /** Keeps a copy of the marks. */
        public Bar {
            marks = List.copyOf(marks);
        }
    }
}
