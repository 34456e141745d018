package loftcoil.engine.build;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import loftcoil.engine.build.CutList.Bar;
import loftcoil.engine.build.PipeChain.Joint;
import loftcoil.engine.pipe.Tube;
import loftcoil.engine.words.Measure;

/**
 * Cuts pieces of one tube from lengths as sold: the longest first, into the first length with room (first-fit decreasing, which
 * needs at most 11/9 of the least number of lengths, and one more: Dósa, Li, Han and Tuza 2013, from memory).
 */
final class StockCutter {

    /** What a hacksaw takes, mm; common practice, no source. */
    static final double SAW_MM = 2;

    /** What joins two parts of a piece longer than what is sold. */
    static final Joint COUPLING = PipeChain.joint("coupling");

    /** Straight lengths as sold, mm; common practice, no source: 3 m, and 10 ft for the tubes of ASTM B88. */
    private static final double METRIC_MM = 3000;

    private static final double TEN_FEET_MM = 3048;
    private static final double MM_PER_M = 1000;

    private record Cut(String mark, double mm) {}

    private static final class Length {
        private final List<String> marks = new ArrayList<>();
        private double usedMm;
        private double gone;

        void take(Cut cut, double stockMm) {
            marks.add(cut.mark());
            usedMm += cut.mm();
            // The last piece may end where the length ends: then there is no saw cut behind it.
            gone = Math.min(stockMm, gone + cut.mm() + SAW_MM);
        }
    }

    private final Tube tube;
    private final List<Cut> cuts = new ArrayList<>();

    StockCutter(Tube tube) {
        this.tube = tube;
    }

    /** Length as sold, mm. */
    static double stockMm(Tube tube) {
        return tube.name().startsWith("B88") ? TEN_FEET_MM : METRIC_MM;
    }

    Tube tube() {
        return tube;
    }

    void add(String mark, double mm) {
        cuts.add(new Cut(mark, mm));
    }

    /** The lengths to buy. */
    List<Bar> bars() {
        double stockMm = stockMm(tube);
        List<Length> lengths = new ArrayList<>();
        cuts.stream().sorted(Comparator.comparingDouble(Cut::mm).reversed()).forEach(cut -> {
            Length length = lengths.stream()
                    .filter(open -> open.gone + cut.mm() <= stockMm)
                    .findFirst()
                    .orElse(null);
            if (length == null) {
                length = new Length();
                lengths.add(length);
            }
            length.take(cut, stockMm);
        });
        return lengths.stream().map(length -> bar(length, stockMm)).toList();
    }

    private Bar bar(Length length, double stockMm) {
        return new Bar(
                tube.name(),
                Measure.metres(stockMm / MM_PER_M),
                length.marks,
                Measure.metres(length.usedMm / MM_PER_M),
                Measure.metres((stockMm - length.usedMm) / MM_PER_M));
    }
}
